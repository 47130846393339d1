// jpg 1600x1200 blur 72-140 taken "2025:09:13 21:18:06"
#include "shop.inc"
Cam(<-14, 20, -45>, <-1.2, 7.6, 0>, 42)
LampLight()
MillRoom(0, 31)
#declare BH = 10.6;
object { BaseCasting(T_Cast) rotate x*180 rotate y*90 translate y*BH }
// the bright half
object { RB(<2.2, BH - 1, -7.4>, <11.7, BH + .04, 7.4>, .3) texture { T_Mach } }
object { Jack(BH - 2.6) translate <-9.6, 0, -5.6> } object { Jack(BH - 2.6) translate <-9.6, 0, 5.6> } object { Jack(BH - 2.6) translate <10, 0, -3> }
object { Strap(BH, 3.4) rotate y*0 translate <-13.4, 0, -5.6> } object { Strap(BH, 3.4) translate <-13.4, 0, 5.6> } object { Strap(BH + .04, 3) rotate y*180 translate <14.2, 0, -3> }
object { FlyCutter(4.4) rotate y*200 translate <4.6, BH + .04, 1> } MillHead(<4.6, BH + 8, 1>)
object { Chips(420, 13, 5, .5, 0, T_ChipIron, .7) translate <0, 0, -7> } object { Chips(180, 8, 4, .3, 0, T_ChipIron, .6) translate <3, BH + .05, -2> }
Mark(<-9.6, 6, -5.6>, "30 62 jack") Mark(<5, BH + 2, -2>, "68 38 flycutter")
