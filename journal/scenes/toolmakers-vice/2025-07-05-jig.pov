// jpg 1600x1200 blur 44-80 turn 3 taken "2025:07:05 20:15:33"
#include "shop.inc"
Cam(<-9, 19, -25>, <.2, .4, -.3>, 33)
WindowLight()
Bench(-30)
object { Cloth(48, 34, <.05,.11,.24>, 3) }
#macro Plate() difference { RB(<-3.2, 0, -1.7>, <3.2, .55, 1.7>, .07) cylinder { <-1.9, -1, 0>, <-1.9, 1, 0>, .33 } cylinder { <1.9, -1, 0>, <1.9, 1, 0>, .33 } cone { <-1.9, .35, 0>, .33, <-1.9, .6, 0>, .62 } cone { <1.9, .35, 0>, .33, <1.9, .6, 0>, .62 } texture { T_Ground } } #end
object { Plate() rotate y*14 translate <-5.2, .36, -2.8> }
object { Plate() rotate <0, -22, 3> translate <-4.6, .4, 2.6> }
union {
  difference { RB(<-3.8, 0, -2.3>, <3.8, 1.6, 2.3>, .12) #for (I, -1, 1, 2) cylinder { <I*1.9, -1, 0>, <I*1.9, 3, 0>, .33 } #end texture { T_Steel } }
  object { RB(<-3.8, -.7, 2>, <3.8, 1.5, 2.9>, .1) texture { T_Steel } } object { RB(<3.5, -.7, -1.2>, <4.5, 1.5, 1.2>, .1) texture { T_Steel } }
  #for (I, -1, 1, 2) difference { cylinder { <I*1.9, 0, 0>, <I*1.9, 1.95, 0>, .75 } cylinder { <I*1.9, -1, 0>, <I*1.9, 3, 0>, .33 } texture { T_HSS } } #end
  cylinder { <4.4, .3, 0>, <6.2, .3, 0>, .3 texture { T_Steel } } object { Knurl(.7, .9) rotate z*-90 translate <6.2, .3, 0> texture { T_Brass } }
  rotate y*-18 translate <5, 1, .3> }
object { Chips(26, 12, 7, .1, 1, T_ChipSteel, .8) translate <2, .35, -5> }
