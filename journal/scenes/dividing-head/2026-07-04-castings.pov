// jpg 1600x1200 blur 58-110 taken "2026:07:04 21:20:16"
#include "shop.inc"
Cam(<-15, 25, -35>, <.4, 2.6, -.4>, 36)
WindowLight()
BenchRoom(61)
union { object { RB(<-19, 0, -12>, <19, .06, 12>, .02) texture { T_Paper } } #for (I, 0, 7) box { <-17.5 + I*5, .06, -8.5>, <-17.4 + I*5, .07, 10> pigment { rgb .4 } } #end #for (I, 0, 5) box { <-17.5, .06, -8.5 + I*3.7>, <17.5, .07, -8.4 + I*3.7> pigment { rgb .4 } } #end
  #for (I, 0, 4) box { <-14 + I*1.2, .06, 10.6>, <-13.4 + I*1.2, .07, 11.3> pigment { rgb <.5,.08,.05> } } #end
  union { #for (I, 0, 2) torus { 2 + I*1.6, .06 } #end torus { 1.2, .06 translate x*9 } box { <-7, -.03, -.05>, <7, .06, .05> } box { <-.05, -.03, -6>, <.05, .06, 6> } box { <-5, -.03, -5.4>, <12, .06, -5.3> } box { <-5.2, -.03, -5.4>, <-5.1, .06, 0> } box { <5.1, -.03, -5.4>, <5.2, .06, 0> } translate <-5, .06, -1> pigment { rgb <.10,.10,.12> } }
  rotate y*9 translate y*.05 }
union { RC(<-4, 6, 0>, <4, 6, 0>, 3.6, .4) RB(<-4.6, 0, -4.6>, <4.6, 1.6, 4.6>, .4) RB(<-2.6, 1, -2.4>, <2.6, 6, 2.4>, .4) RC(<0, 6.5, 3>, <0, 6.5, 4.9>, 1.6, .3) cylinder { <-4.06, 6, 0>, <-4.0, 6, 0>, 1.3 texture { T_Line } } texture { T_Cast } rotate y*-24 translate <4.6, .1, 3> }
union { RB(<-3.6, 0, -2.6>, <3.6, 1.3, 2.6>, .35) RB(<-1.5, .8, -1.4>, <1.5, 6.4, 1.4>, .45) RC(<-1.9, 6, 0>, <1.9, 6, 0>, 1.6, .3) texture { T_Cast } rotate y*34 translate <-8.4, .1, -3.4> }
union { object { Hex(0, 13, .34) pigment { rgb <.1,.25,.14> } } cone { y*13, .36, y*14.2, .05 pigment { rgb <.6,.42,.22> } } rotate <90, 66, 0> translate <-2, .5, -10.4> }
