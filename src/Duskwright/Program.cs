using Duskwright.Commands;

return await CommandLine.RunAsync(args);
