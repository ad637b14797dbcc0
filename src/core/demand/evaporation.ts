/** Water that a radiation of 1 MJ/m2 can evaporate [mm]: the inverse of the latent heat, 2.45 MJ/kg. */
export const MM_A_MEGAJOULE = 0.408; // eq. 20
