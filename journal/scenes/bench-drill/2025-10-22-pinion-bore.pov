// jpg 1600x1200 blur 56-120 taken "2025:10:22 20:36:29"
#include "shop.inc"
Cam(<-15, 21, -32>, <-.9, 6.4, -.6>, 40)
LampLight()
MillRoom(0, 42)
object { AnglePlate(22, 12, 11) translate <0, 0, 6> }
difference { object { Head(T_Cast, 1, 1, 1) rotate x*90 translate <0, 5, 0> } cylinder { <-4.5, 5, .5>, <-4.5, 9, .5>, .52 texture { T_Mach } } box { <-7, 8.3, -2>, <-2, 9, 3> texture { T_TurnY translate <-4.5, 0, .5> } } }
cylinder { <-4.5, 5, -9.5>, <-4.5, 5, 5.8>, 1.58 texture { T_Polish } }
object { RB(<-7.2, 0, -3>, <-5.4, 2.5, 4>, .1) texture { T_Steel } } object { RB(<3.6, 0, -3>, <5.6, 2.1, 4>, .1) texture { T_Steel } }
object { Strap(5.9, 4.6) rotate y*80 translate <.2, 0, -7> } object { Strap(7.9, 3.4) rotate y*180 translate <9.6, 0, 1> }
union { object { Flutes(6, .5, 5, .22, 400) texture { T_HSS } } cylinder { y*5, y*9, .46 texture { T_HSS } } object { DrillChuck() translate y*8 } cylinder { y*12, y*16, 1 texture { T_Steel } } translate <-4.5, 7, .5> }
MillHead(<-4.5, 21, .5>)
object { Chips(220, 7, 4, .4, 0, T_ChipIron, .6) translate <-2, 0, -5> }
