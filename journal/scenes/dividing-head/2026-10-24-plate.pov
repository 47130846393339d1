// jpg 1600x1200 blur 54-110 taken "2026:10:24 21:10:02"
#include "shop.inc"
Cam(<-11, 33, -30>, <.6, 16.4, -2>, 36)
LampLight()
BenchRoom(66)
#macro IndexPlate(R, N, Gap, Rh) difference { union { cylinder { 0, y*.5, R } } cylinder { -y, y, .8 } #for (I, 0, N - 1) cylinder { -y, y*2, Rh translate x*R*.82 rotate -y*(I*(360 - Gap)/N + 284) } #end texture { T_TurnY } } #end

BenchDrill(T_Sea, 15.4, 1)
cylinder { <-.6, 15.41, -2.6>, <-.6, 15.455, -2.6>, 5.6 texture { T_Line } }
object { IndexPlate(6, 25, 17, .3) translate <-.6, 15.45, -2.6> }
object { Chips(16, 5, 3.6, .1, 1, T_ChipSteel, .6) translate <-1, 15.9, -4> }
