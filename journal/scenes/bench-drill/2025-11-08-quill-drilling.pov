// jpg 1600x900 blur 58-120 taken "2025:11:08 20:48:14"
#include "shop.inc"
Cam(<30, 15, -37>, <14, -1.4, 0>, 40)
LampLight()
LatheRoom(45)
Headstock(-5.5) Chuck3(0, 1.6, 40)
difference { cylinder { <-2, 0, 0>, <18, 0, 0>, 1.6 } cylinder { <3, 0, 0>, <19, 0, 0>, .95 } texture { T_TurnX } }
Steady(14, 1.6)
object { TwistDrill(.9, 16) rotate z*-90 translate x*13 } cylinder { <27, 0, 0>, <33, 0, 0>, 1.2 texture { T_Steel } } Tailstock(31)
object { Chips(260, 5, 4, 1.6, 2, T_ChipSteel, 1) translate <20, -9, -.4> }
#for (I, 0, 1) object { Curl3 scale <1.1, 1.4, 1.1> rotate <20 + I*50, I*70, -70> translate <18.4, -.8 - I, -1.4> texture { T_ChipSteel } } #end
