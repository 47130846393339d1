// jpg 1600x1200 blur 62-130 taken "2026:09:12 20:31:27"
#include "shop.inc"
Cam(<-27, 19, -36>, <3.4, -2.4, 0>, 45)
LampLight()
LatheRoom(63)
// a coarse thread of trapezoid section; with slots it is a hob
#declare FW = function(x, y, z) { 1.75 + .72*(max(0, min(1, (abs(mod(y/1.25 + x/(2*pi) + 20, 1) - .5) - .13)*6)) - 1) + .72 }
#declare FH = function(x, y, z) { select(mod(x*8/(2*pi) + 40, 1) - .3, 1.6, 1.6, FW(x, y, z)) }

object { RB(<-17, -11, -8>, <-7, 9, 8>, 1.4) texture { T_LathePaint } } object { RC(<-8, 0, 0>, <-5.8, 0, 0>, 4.4, .3) texture { T_LathePaint } } cylinder { <-6, 0, 0>, <-4, 0, 0>, 2.6 texture { T_Polish } } cylinder { <-21, 0, 0>, <-16, 0, 0>, .9 texture { T_Steel } } object { RB(<-18.2, -16, -9>, <-17.2, 2, 3>, .3) texture { T_Dull } }
FacePlate(0, 6, 10) cone { <0, 0, 0>, 1.3, <3, 0, 0>, .2 texture { T_Polish } }
cylinder { <2.8, 0, 0>, <20, 0, 0>, .95 texture { T_TurnX } }
object { RadMesh(FW, 9, 72, 180) rotate z*-90 translate x*8 texture { T_Steel } }
difference { RC(<4, 0, 0>, <5.4, 0, 0>, 1.9, .3) cylinder { <3, 0, 0>, <8, 0, 0>, .9 } texture { T_Dull } } object { RC(<4.7, -1.5, -1.5>, <4.7, -2.8, -2.8>, .5, .2) texture { T_Dull } } object { RC(<4.7, -2.8, -2.8>, <-.6, -2.9, -2.9>, .5, .2) texture { T_Dull } }
Centre(19.6) Tailstock(24)
Saddle(13) ToolPost(13, -10) ToolBit(13, -12, -1.9)
// change gears on the end of the headstock
#macro Wheel(N, R, Y, Z, Tx) union { difference { object { Gear(N, R, .34, 1) } cylinder { -y, y*2, .7 } #for (I, 0, 4) cylinder { -y, y*2, R*.18 translate x*R*.56 rotate y*I*72 } #end } cylinder { -y*.4, y*1.4, .9 } object { Hex(1.3, 2.1, .6) } rotate z*90 translate <-18.6, Y, Z> texture { Tx } } #end
Wheel(30, 3.2, 0, 0, T_Steel) Wheel(44, 4.7, -4.6, -5.8, T_Dull) Wheel(24, 2.6, -11.4, -3.6, T_Brass) Wheel(52, 5.6, -12.4, 4.2, T_Steel)
// brass stop on the bed
union { RB(<-1, -9.4, -7>, <1.6, -6, -2.2>, .15) cylinder { <-1, -7.4, -5>, <4, -7.4, -5>, .45 } object { Knurl(.9, 1) rotate z*90 translate <-1, -7.4, -5> } texture { T_Brass } }
object { Chips(170, 5, 3, .6, 1, T_ChipSteel, .8) translate <12, -9.1, 2> }
