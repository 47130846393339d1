// jpg 1200x1600 blur 52-110 turn 6 taken "2025:10:04 20:22:48"
#include "shop.inc"
Cam(<47, 17, -22>, <10, -2.6, -.6>, 32)
TubeLight()
LatheBed() object { Wall(62, 0, 36) translate y*-14 } object { Wall(62, 0, 37) rotate y*-90 translate <0, -14, 0> }
Headstock(-5) FacePlate(0, 10.6, 10)
union { object { Head(T_Cast, 1, 0, 0) rotate z*-90 translate <7.4, -4.5, 0> } object { RB(<.05, -10, 1>, <11, 3, 2.6>, .12) texture { T_Ground } } object { RB(<.1, 4, -3>, <4.2, 8.6, 3>, .3) texture { T_Lead } } object { Hex(0, .9, .8) rotate z*-90 translate <4.2, 6.4, 0> texture { T_Steel } } rotate x*28 }
cylinder { <11, 0, -.5>, <29, 0, -.5>, .62 texture { T_Steel } }
Saddle(31) ToolPost(31, -1) 
object { Dust(16, 8, 3.6, <.075,.073,.07>, 3) translate <17, -9.3, -3.6> } object { Dust(12, 9, 2.4, <.075,.073,.07>, 5) translate <18, -9.3, 3.6> }
object { Chips(200, 5, 5, .4, 0, T_ChipIron, .5) translate <18, -9, 0> }
