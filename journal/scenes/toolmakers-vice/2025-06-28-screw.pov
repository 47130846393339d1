// jpg 1600x900 blur 48-110 taken "2025:06:28 21:05:02"
#include "shop.inc"
Cam(<3, 16, -30>, <12.6, -.8, -.4>, 42)
LampLight()
LatheRoom(3)
Headstock(-5.5) Chuck3(0, 1.6, 20)
cylinder { <-2, 0, 0>, <10.6, 0, 0>, 1.6 texture { T_TurnX } }
cylinder { <10.5, 0, 0>, <11.6, 0, 0>, .78 texture { T_TurnX } }
object { Rings(1.12, .3, 11) rotate z*-90 translate x*11.6 texture { T_Steel } }
cylinder { <22.5, 0, 0>, <24.5, 0, 0>, .85 texture { T_TurnX } }
Centre(24.2) Tailstock(28.5)
Saddle(20.5) ToolPost(20.5, -9.5) ToolBit(18.4, -11, -1.25)
object { Chips(130, 7, 3, .4, 1, T_ChipSteel, .8) translate <16, -9.2, 3> }
