// jpg 1280x960 blur 34-60 taken "2025:11:29 22:14:21"
#include "shop.inc"
Cam(<-4, 12.5, -15>, <1.5, .8, .2>, 33)
LampLight()
Bench(-30)
object { Cloth(60, 44, <.06,.12,.26>, 11) translate y*.1 }
// teeth of a fine rack; the seventeenth is too wide
#declare P = .34;
union { RB(<-6.2, 0, -.55>, <6.2, .78, .55>, .03)
  #declare X = -5.9; #declare K = 0;
  #while (X < 5.6) #declare Wd = P*.5*select(K - 22, 1, 2.3, 1);
    prism { linear_spline -.55, .55, 5, <X, .7>, <X + Wd*1.25, .7>, <X + Wd*1.0, 1>, <X + Wd*.25, 1>, <X, .7> rotate -x*90 scale <1, 1, -1> }
    #if (K = 22) #declare XW = X + Wd/2; #end #declare X = X + Wd + P*.5; #declare K = K + 1; #end
  texture { T_Steel } rotate y*-8 translate <.1, .3, -.3> }
Mark(vrotate(<XW, 1, 0>, -y*8) + <.1, .3, -.3>, "57 44 wide tooth")
// the card
union { object { RB(<-3, 0, -4>, <3, .04, 4>, .015) texture { T_Paper } } #for (I, 0, 9) box { <-2.4, .04, 3 - I*.7>, <-2.4 + 2.2 + 2.2*rand(Sd), .05, 3.06 - I*.7> pigment { rgb <.12,.13,.2> } } #if (mod(I, 4) < 3) box { <-2.6, .05, -.03>, <2.4, .06, .04> rotate y*(rand(Sd)*8 - 4) translate z*(3.03 - I*.7) pigment { rgb <.45,.06,.05> } } #end #end rotate y*20 translate <3.4, .42, 5.6> }
union { object { Hex(0, 11, .34) pigment { rgb <.35,.03,.03> } } cone { y*11, .36, y*12.2, .06 pigment { rgb <.6,.42,.22> } } rotate <90, 58, 0> translate <-8.4, .8, 3.4> }
