// jpg 1600x1200 blur 46-90 taken "2025:10:08 20:41:00"
#include "shop.inc"
Cam(<-13, 16, -27>, <1.2, 2.4, -.6>, 37)
WindowLight()
BenchRoom(39)
object { Cloth(60, 40, <.21,.21,.22>, 4) }
union {
  difference { cylinder { <-6, 0, 0>, <6, 0, 0>, 1.58 } cylinder { <-5.5, 0, 0>, <7, 0, 0>, .5 } cone { <3, 0, 0>, .5, <6.1, 0, 0>, .95 } #for (I, 0, 2) box { <-3.6, 0, -.1>, <8, 3, .1> rotate x*(I*120 - 28) } #end texture { TurnedIn(<.66,.46,.14>, y*90) } }
  cone { <4, 0, 0>, .4, <6.4, 0, 0>, .9 texture { T_Steel } } cylinder { <6.4, 0, 0>, <7.2, 0, 0>, .92 texture { T_Steel } } box { <6.9, -1, -.12>, <7.3, 1, .12> texture { T_Black } }
  cylinder { <-9.5, 0, 0>, <-6, 0, 0>, .9 texture { T_Steel } }
  rotate y*24 translate <-3.4, 1.75, -5.4> }
object { Head(T_Cast, 1, 0, 0) rotate x*90 rotate y*-34 translate <6.5, 3, 5> }
cylinder { <-14, .2, 3>, <-14, 3, 3>, 2.6 texture { T_Alu } } cylinder { <-14, 3, 3>, <-14, 3.02, 3>, 2.3 pigment { rgb <.10,.09,.085> } normal { wrinkles .7 scale .5 } finish { diffuse .7 specular .4*RF roughness .03 } }
