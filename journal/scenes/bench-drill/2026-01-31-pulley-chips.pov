// jpg 1600x1200 blur 62-120 taken "2026:01:31 21:08:31"
#include "shop.inc"
Cam(<20, 17, -42>, <6, -5.4, -1>, 38)
TubeLight()
LatheRoom(53)
Headstock(-5.5) Chuck3(0, 2, 50)
cylinder { <-2, 0, 0>, <4, 0, 0>, 2 texture { T_AluTurn } }
object { Pulley(3.6, 2) rotate y*180 translate x*10 texture { T_AluTurn } }
Saddle(12) ToolPost(12, -12) union { box { <-.5, -.8, -7>, <.5, 0, 4.2> } prism { linear_spline -.7, 0, 4, <-.5, 4.2>, <0, 5.6>, <.5, 4.2>, <-.5, 4.2> } rotate y*-16 translate <9, .1, -9.4> texture { T_HSS } }
object { Chips(900, 22, 6, 8, 2, T_ChipAlu, 1.7) translate <4, -22, -13> } object { Chips(340, 6, 4, 2.4, 2, T_ChipAlu, 1.4) translate <9, -9, .5> } object { Chips(160, 4, 3, 1, 2, T_ChipAlu, 1.2) translate <14, -5, -14> }
