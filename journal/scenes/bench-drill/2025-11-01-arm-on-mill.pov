// jpg 1200x1600 blur 50-110 turn 8 taken "2025:11:01 21:02:50"
#include "shop.inc"
Cam(<-17, 19, -31>, <-2.4, 6.8, 0>, 36)
LampLight()
MillRoom(0, 44)
object { Parallels(18, 2.6, 2.2) translate x*-3 }
difference { object { ArmCasting(T_Cast) translate y*5 } cylinder { y*1, y*9, 1.55 texture { T_TurnY } } box { <-3.2, 7.35, -3.2>, <3.2, 8, 3.2> texture { T_TurnY } } }
object { Strap(6.7, 3.4) translate <-13.4, 0, 0> } object { Strap(6.2, 3) rotate y*-90 translate <-4.6, 0, -4.4> } object { Strap(6.2, 3) rotate y*90 translate <-4.6, 0, 4.4> }
object { BoringHead(6) rotate y*150 translate <0, 7, 0> } MillHead(<0, 22, 0>)
object { Chips(300, 8, 4, .4, 0, T_ChipIron, .6) translate <-1, 0, -6> }
