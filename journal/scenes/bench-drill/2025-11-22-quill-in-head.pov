// jpg 1200x1600 blur 54-100 turn 6 taken "2025:11:22 16:51:36"
#include "shop.inc"
Cam(<-14, 16, -38>, <-.6, 9.2, 0>, 27)
WindowLight()
BenchRoom(47)
object { Head(T_Cast, 1, 1, 1) rotate y*-10 translate y*5.62 }
union { difference { cylinder { <-4.5, 6, 0>, <-4.5, 19, 0>, 1.58 } cylinder { <-4.5, 12, 0>, <-4.5, 20, 0>, 1.15 texture { T_TurnY translate x*-4.5 } } texture { T_Polish } } torus { 1.58, .03 translate <-4.5, 11.25, 0> texture { pigment { rgb <.05,.035,.01> } } } rotate y*-10 }
object { Cloth(12, 9, <.42,.40,.36>, 8) scale <1, 1.5, 1> rotate y*30 translate <8.6, .1, -4.6> }
union { cylinder { 0, y*4.6, 2.5 texture { Painted(<.30,.05,.03>) } } cone { y*4.6, 2.5, y*6.6, .7 texture { Painted(<.30,.05,.03>) } } cone { y*6.6, .45, <3.6, 12, 0>, .14 texture { T_Brass } } translate <8, 0, 9> }
