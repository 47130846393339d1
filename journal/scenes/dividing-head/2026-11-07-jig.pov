// jpg 1600x1200 blur 50-100 taken "2026:11:07 20:42:12"
#include "shop.inc"
Cam(<-11, 30, -27>, <-.2, 17, -2.4>, 33)
LampLight()
BenchRoom(67)
#macro IndexPlate(R, N, Gap, Rh) difference { union { cylinder { 0, y*.5, R } } cylinder { -y, y, .8 } #for (I, 0, N - 1) cylinder { -y, y*2, Rh translate x*R*.82 rotate -y*(I*(360 - Gap)/N + 200) } #end texture { T_TurnY } } #end

BenchDrill(T_Sea, 15.4, 1)
cylinder { <-.4, 15.41, -2.6>, <-.4, 15.455, -2.6>, 5.6 texture { T_Line } }
object { IndexPlate(6, 37, 0, .2) translate <-.4, 15.45, -2.6> }
// the arm: peg on the left, bush on the right
#declare PL = <-3.9, 16, -5.6>; #declare BU = <4.3, 16, -1.4>;
union { difference { union { cylinder { PL, PL + y*.7, 1.15 } cylinder { BU, BU + y*.7, 1.3 } object { RB(<0, 0, -.85>, <vlength(BU - PL), .7, .85>, .06) rotate -y*degrees(atan2(BU.z - PL.z, BU.x - PL.x)) translate PL } } cylinder { BU - y, BU + y*2, .3 } texture { T_Steel } }
  cylinder { PL - y*.8, PL + y*2.6, .36 texture { T_Polish } } object { Knurl(.7, .9) translate PL + y*2.2 texture { T_Steel } } difference { cylinder { BU, BU + y*1.7, .8 } cylinder { BU - y, BU + y*3, .3 } texture { T_HSS } } }
Mark(PL + y*1.5, "38 60 peg") Mark(BU + y*1.4, "70 44 bush")
object { Chips(14, 5, 3, .1, 1, T_ChipSteel, .55) translate <-1, 15.9, -5> }
