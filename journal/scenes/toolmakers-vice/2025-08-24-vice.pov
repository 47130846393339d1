// jpg 1600x1200 blur 44-84 taken "2025:08:24 19:48:26"
#include "shop.inc"
Cam(<-17, 11, -25>, <.2, 2.7, 0>, 33)
WindowLight()
object { RB(<-90, -3, -12>, <90, 0, 16>, .3) texture { T_Wood } } Wall(46, 1, 12)
#declare BodyV = union { RB(<-8, 0, -2.4>, <7, 1.4, 2.4>, .18) RB(<4, .8, -2.4>, <7, 5.2, 2.4>, .2) RB(<-8, .8, -2.4>, <-6.4, 3.2, 2.4>, .2) };
difference { object { BodyV } box { <-6.3, 1.1, -.6>, <3.9, 2, .6> } texture { T_Black } }
#declare Slide = union { RB(<-3.4, 1.42, -2.3>, <.1, 5.1, 2.3>, .2) object { RB(<.1, 2.2, -2.4>, <.55, 5.1, 2.4>, .05) texture { T_Ground } }
  #for (I, -1, 1, 2) cylinder { <-2.2 + I*.7, 5, 0>, <-2.2 + I*.7, 5.16, 0>, .3 texture { T_Dull } } #end texture { T_Black } };
object { Slide translate x*2.3 }
object { RB(<3.6, 2.2, -2.4>, <4.02, 5.1, 2.4>, .05) texture { T_Ground } }
object { Rings(.5, .2, 7) rotate z*90 translate <-1, 2.2, 0> texture { T_Steel } }
object { Knurl(1.25, 2) rotate z*90 translate <-8.6, 2.2, 0> texture { T_Steel } } cylinder { <-11.4, 2.2, 0>, <-8, 2.2, 0>, .75 texture { T_Steel } }
// the pencil
union { object { Hex(-3, 10, .36) pigment { rgb <.55,.27,.02> } finish { diffuse .8 specular .5*RF roughness .02 } } cylinder { -y*3, -y*3.4, .37 texture { T_Brass } } cylinder { -y*3.4, -y*4, .36 pigment { rgb <.6,.2,.17> } }
  cone { y*9.95, .39, y*11.3, .1 pigment { rgb <.62,.42,.22> } } cone { y*11.3, .1, y*11.8, .02 pigment { rgb .03 } } rotate x*-38 translate <3.22, 4, .8> }
object { Chips(20, 9, 4, .1, 1, T_ChipSteel, .7) translate <-2, 0, -7> }
