// png 960x1280 colours 220 taken "2026:04:18 19:24:33"
#include "shop.inc"
Cam(<-6, 22, -66>, <0, 18, 0>, 44)
WindowLight()
box { <-200, -60, 22>, <200, 160, 26> texture { pigment { bozo color_map { [0 rgb <.62,.61,.57>] [1 rgb <.74,.73,.69>] } scale 14 } normal { average normal_map { [1 brick .3 brick_size <22, 7, 30> mortar 1] [1 bumps .5 scale 3] } } finish { diffuse .85 } } }
object { RB(<-90, 46, -5>, <90, 54, 5>, .6) texture { T_Wood } }
object { Bench(-30) translate y*-8 }
#macro Wire(X, Y) union { cylinder { <X, Y, 0>, <X, 46, 0>, .16 } torus { .8, .16 rotate x*90 translate <X, Y - .6, 0> } torus { 5, .16 rotate z*90 scale <1, 1, 1.05> translate <X, 50, 0> } texture { T_Dull } } #end
Wire(-20, 31) Wire(-6, 28) Wire(7, 33) Wire(19, 26)
object { BaseCasting(T_Sea) rotate x*-90 rotate y*28 translate <-20, 18, -2> }
object { Head(T_Sea, 1, 1, 0) rotate z*90 rotate y*20 translate <-6, 18.6, 0> }
object { TableDisc(T_Sea, T_Ground) rotate x*78 rotate y*-24 translate <7, 25, 0> }
object { ArmCasting(T_Sea) rotate z*-90 rotate y*-30 translate <19, 14.6, 0> }
// newspaper without a word on it
#for (I, 0, 3) union { object { RB(<-15, 0, -11>, <15, .08, 11>, .03) texture { T_Paper } } #for (C, 0, 3) #for (K, 0, 16) box { <-13.6 + C*7, .08, 9 - K*1.1>, <-13.6 + C*7 + 5 + rand(Sd), .09, 9.4 - K*1.1> pigment { rgb .34 } } #end #end rotate y*(-20 + I*17) translate <-24 + I*16, -7.9 + I*.12, -8 + mod(I, 2)*4> } #end
union { difference { RC(0, y*9, 5, .2) cylinder { y*8, y*10, 4.6 } Painted(<.5,.5,.5>) } cylinder { y*7.8, y*8.05, 4.6 texture { T_Sea } } translate <21, -7.6, -9> }
union { RC(0, x*9, .7, .3) RB(<-3, -.3, -1.4>, <.5, .3, 1.4>, .2) texture { T_Handle } translate <-18, -6.6, -15> rotate y*-8 }
