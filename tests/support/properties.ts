import fc from "fast-check";

// the same cases in each run; others by PROPERTY_SEED=2 npm test
fc.configureGlobal({ seed: Number(process.env.PROPERTY_SEED ?? 1) });

export default fc;
