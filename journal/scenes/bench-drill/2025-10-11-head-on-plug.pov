// jpg 1600x1200 blur 66-140 taken "2025:10:11 21:09:18"
#include "shop.inc"
Cam(<-11, 17, -46>, <.4, 7.4, 0>, 40)
LampLight()
MillRoom(0, 40)
object { AnglePlate(22, 14, 11) translate <1, 0, 3.1> }
cylinder { <-4.5, 0, 0>, <-4.5, 1.7, 0>, 4 texture { T_TurnY translate x*-4.5 } } cylinder { <-4.5, 1.6, 0>, <-4.5, 14, 0>, 1.59 texture { T_Polish } }
#for (I, 0, 2) object { Hex(1.7, 2.5, .6) translate <3.1, 0, 0> rotate y*(I*120 + 62) translate x*-4.5 texture { T_Black } } #end
object { Head(T_Cast, 1, 1, 0) translate <0, 8.6, 0> }
cylinder { <-4.5, 14.2, 0>, <-4.5, 14.8, 0>, 2.3 texture { T_Steel } } object { Hex(14.8, 15.8, .85) translate x*-4.5 texture { T_Steel } } object { Rings(.45, .14, 3) translate <-4.5, 14.6, 0> texture { T_Steel } }
object { BoringHead(3.6) rotate y*160 translate <4.5, 10.2, 0> } MillHead(<4.5, 21, 0>)
object { Chips(280, 8, 4, .4, 0, T_ChipIron, .6) translate <5, 0, -4> }
Mark(<-4.5, .8, -4>, "38 72 plug") Mark(<4.5, 15, -2.9>, "64 28 boring head")
