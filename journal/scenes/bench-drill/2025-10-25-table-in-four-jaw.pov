// jpg 1600x1200 blur 52-120 taken "2025:10:25 20:19:34"
#include "shop.inc"
Cam(<25, 13, -27>, <2, -1.4, -.6>, 43)
TubeLight()
LatheRoom(43)
Headstock(-4.5) Chuck4(0, 6.6, 14)
difference { RC(<.4, 0, 0>, <3, 0, 0>, 6.6, .3) texture { T_Cast } }
difference { cylinder { <2.8, 0, 0>, <3.02, 0, 0>, 6.4 } cylinder { <2, 0, 0>, <4, 0, 0>, 3.7 } texture { T_TurnX } }
cylinder { <2.8, 0, 0>, <3.22, 0, 0>, 3.68 texture { T_Cast } }
Saddle(9) ToolPost(8.6, -10) object { ToolBit(0, 0, 6) rotate y*-32 translate <6.2, .05, -9> }
object { Chips(380, 7, 5, 1, 0, T_ChipIron, .8) translate <9, -9.2, 0> } object { Chips(200, 5, 4, .6, 0, T_ChipIron, .8) translate <12, -7.3, -7> }
