/** The area of a pot's top [mm²], by the shape and the top on Block. */
export const POT_AREA = 'IF(Pot_Shape="square",Pot_Top_mm^2,PI()*Pot_Top_mm^2/4)';
