// jpg 1600x1200 blur 60-120 taken "2026:10:10 20:55:30"
#include "shop.inc"
Cam(<-15, 17, -36>, <0, 7.4, 0>, 36)
LampLight()
MillRoom(0, 65)
// a coarse thread of trapezoid section; with slots it is a hob
#declare FW = function(x, y, z) { 1.75 + .72*(max(0, min(1, (abs(mod(y/1.25 + x/(2*pi) + 20, 1) - .5) - .13)*6)) - 1) + .72 }
#declare FH = function(x, y, z) { select(mod(x*8/(2*pi) + 40, 1) - .3, 1.6, 1.6, FW(x, y, z)) }

#declare WY = 6.6;
// wheel on an arbor along z between two small centres
union { object { Gear(40, 5, .3, 2) rotate x*-90 rotate z*2 translate z*1 } cylinder { -z*1.8, z*1.8, 1.8 } texture { T_Bronze } translate y*WY }
cylinder { <0, WY, -7>, <0, WY, 7>, .7 texture { T_Steel } } #for (I, -1, 1, 2) object { Hex(0, .8, 1.1) rotate x*90 translate <0, WY, I*2.4 - .4> texture { T_Steel } } cone { <0, WY, I*6.6>, .1, <0, WY, I*8.4>, .9 texture { T_Polish } } object { RB(<-1.8, 0, I*9 - 1>, <1.8, WY + 1.8, I*9 + 1>, .3) texture { T_LathePaint } } object { RB(<-3.4, 0, I*9 - 1.6>, <3.4, 1.4, I*9 + 1.6>, .3) texture { T_LathePaint } } #end
// hob above, its axis along x
union { object { RadMesh(FH, 6, 192, 150) translate y*-3 texture { T_HSS } } cylinder { -y*8, y*12, 1 texture { T_Steel } } rotate z*-90 translate <0, WY + 6.3, 0> }
object { RC(<5.6, WY + 6.3, 0>, <9, WY + 6.3, 0>, 2.4, .3) texture { T_Polish } } object { RB(<8.6, WY + 1.6, -5>, <20, WY + 12, 7>, 1.2) texture { T_MillPaint } } object { RB(<-10, -10, 26>, <26, 70, 46>, 2) texture { T_MillPaint } } object { RB(<10, WY + 8, 0>, <19, 40, 30>, 1.5) texture { T_MillPaint } }
object { RB(<-9.4, WY + 4.6, -1.4>, <-7, WY + 8, 1.4>, .4) texture { T_MillPaint } } object { RB(<-9.4, WY + 7.4, -1.2>, <12, WY + 9.4, 1.2>, .4) texture { T_MillPaint } }
object { Dust(11, 8, 1.4, <.55,.36,.12>, 4) translate <1, -.05, -3> } object { Chips(260, 7, 4, .3, 0, T_Bronze, .35) translate <0, .05, -4> }
