/**
 * Ink draws nothing until the end where it takes the machine for a build server by this variable;
 * whoever opens a kitchen in a terminal sits in front of it. Loaded before ink, which looks once.
 */
if (process.env.CI !== undefined) process.env.CI = "false";
if (process.env.CONTINUOUS_INTEGRATION !== undefined) process.env.CONTINUOUS_INTEGRATION = "false";
