/** A native formula for the depth [mm] that 1 mL makes in a can whose opening is `mouth` [mm] wide. */
export const depthOfMillilitre = (mouth: string): string => `1000/(PI()*${mouth}^2/4)`;
