using Training.Web.Commands;
using Training.Web.Demo;

// The first word says what to do; everything else is settings. Without a word it serves, so that the framework's own tools can start it.
var verb = args is [{ } first, ..] && !first.StartsWith('-') ? first : null;
var settings = verb is null ? args : args[1..];
return verb switch
{
    null or "serve" => await ServeCommand.RunAsync(settings),
    "demo" => await DemoCommand.RunAsync(settings),
    "check" => CheckCommand.Run(settings, Console.Out),
    "keys" => KeysCommand.Run(settings, TimeProvider.System, Console.Out),
    "log" => await LogCommand.RunAsync(settings, Console.Out),
    "translated" => TranslatedCommand.Run(settings, Console.Out),
    _ => UnknownVerb.Refuse(verb, Console.Error),
};
