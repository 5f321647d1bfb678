using System.Net;
using System.Net.Sockets;
using Duskwright.Book.Drawings;
using Duskwright.Commands;
using Duskwright.Parts;
using Duskwright.Towns;
using Microsoft.AspNetCore.StaticFiles;
using Microsoft.Extensions.FileProviders;

namespace Duskwright.Serve;

/// <summary>The local web app: an open town, served to this machine only.</summary>
public static class ServeApp
{
    /// <summary>The port at which the app is found unless it is taken.</summary>
    public const int UsualPort = 5187;

    /// <summary>The port at which a phone in the house finds it unless that is taken.</summary>
    public const int PhonePort = UsualPort + 1;

    /// <summary>An address of this machine at whatever port is free.</summary>
    internal const string AnyPort = "http://127.0.0.1:0";

    private static readonly TimeSpan LongestGoodbye = TimeSpan.FromSeconds(3);

    /// <summary>Builds the app without starting it.</summary>
    /// <param name="options">Arguments and paths of the host.</param>
    /// <param name="town">The town to open.</param>
    /// <returns>The app.</returns>
    public static WebApplication Build(WebApplicationOptions options, OpenTown town) => Build(options, town, new OpenTowns(options));

    /// <summary>Builds the app of one of several open towns without starting it.</summary>
    /// <param name="options">Arguments and paths of the host.</param>
    /// <param name="town">The town.</param>
    /// <param name="towns">All that are open; it is among them once it answers.</param>
    /// <param name="held">The town that was meant and that another has; none where none is.</param>
    /// <returns>The app.</returns>
    public static WebApplication Build(WebApplicationOptions options, OpenTown town, OpenTowns towns, HeldTown? held = null) =>
        Build(options, Task.FromResult(new FirstTown(town, held, [])), towns);

    // The town is asked for when the app has started, so that its file is read while the app is made ready.
    private static WebApplication Build(WebApplicationOptions options, Task<FirstTown> first, OpenTowns towns)
    {
        // A page elsewhere whose name is pointed at this machine must not reach the town.
        var app = Build(options, "localhost;127.0.0.1;[::1]", services => services
            .AddSingleton(_ => first.Result.Town!)
            .AddSingleton(s => new PhoneDoor(options, s.GetRequiredService<OpenTown>(), usualPort: PhonePort))
            .AddSingleton(towns));
        app.Use(async (context, next) => await ((await first).Held is { } held ? held.AnswerAsync(context, (await first).Town!, next) : next(context)));
        Map(app);
        app.Lifetime.ApplicationStarted.Register(() =>
        {
            if (first.Result.Town is { } town)
            {
                towns.Stands(town, app);
            }
        });
        return app;
    }

    /// <summary>Builds the same app for devices in the house.</summary>
    /// <param name="options">Arguments and paths of the host.</param>
    /// <param name="town">The town, as devices may have it.</param>
    /// <param name="door">Who may come in.</param>
    /// <param name="addresses">The addresses at which it will answer.</param>
    /// <returns>The app, not started.</returns>
    internal static WebApplication BuildForPhones(WebApplicationOptions options, OpenTown town, PhoneDoor door, IReadOnlyList<IPAddress> addresses)
    {
        var app = Build(options, string.Join(';', addresses.Select(a => a.AddressFamily == AddressFamily.InterNetworkV6 ? $"[{a}]" : a.ToString())), services => services.AddSingleton(town));
        app.UseDoorKeeper(door);
        Map(app);
        return app;
    }

    private static WebApplication Build(WebApplicationOptions options, string hosts, Action<IServiceCollection> itsTown)
    {
        var builder = WebApplication.CreateBuilder(options);
        builder.WebHost.UseStaticWebAssets();
        builder.Logging.SetMinimumLevel(LogLevel.Warning);

        // The keys of this machine's forms lie in the maker's own folder, as everything does; there is nothing to warn of.
        builder.Logging.AddFilter("Microsoft.AspNetCore.DataProtection", LogLevel.Error);
        builder.Services.AddSingleton<NightToday>();
        builder.Services.AddSingleton<PrintRoom>();
        builder.Services.AddSingleton(TimeProvider.System);
        itsTown(builder.Services);
        builder.Configuration["AllowedHosts"] = hosts;
        builder.Services.AddRazorComponents().AddInteractiveServerComponents();

        builder.Services.AddSignalR(o => o.MaximumReceiveMessageSize = 4 * 1024 * 1024);

        var app = builder.Build();
        app.UseGuard();
        return app;
    }

    private static void Map(WebApplication app)
    {
        app.UseStatusCodePagesWithReExecute("/lost", createScopeForStatusCodePages: true);
        app.UseAntiforgery();
        app.UseStaticFiles(new StaticFileOptions
        {
            FileProvider = new PhysicalFileProvider(Path.Combine(AppContext.BaseDirectory, "fonts")),
            RequestPath = "/fonts",
            ContentTypeProvider = new FileExtensionContentTypeProvider(),
        });
        app.MapStaticAssets();
        app.MapGet("/inks.css", () => Results.Text(InkSheet.Css(), "text/css"));
        app.MapDownloads();
        app.MapNightScenes();
        app.MapBenchEntries();
        app.MapBenchSteps();
        app.MapRazorComponents<App>().AddInteractiveServerRenderMode(o => o.ContentSecurityFrameAncestorsPolicy = null);
    }

    /// <summary>Serves until cancelled.</summary>
    /// <param name="townPath">The file to open; none for the demo town.</param>
    /// <param name="port">The port to listen on, 1 to 65535; another is taken where this one is busy.</param>
    /// <param name="cancel">Ends the app.</param>
    /// <returns>0, or 2 where the file cannot be opened.</returns>
    public static async Task<int> RunAsync(string? townPath, int port, CancellationToken cancel)
    {
        // Each takes about as long as the other.
        var opening = Task.Run(() => FirstTown.Of(townPath, TownFolder.OfUser), cancel);
        var options = new WebApplicationOptions { ContentRootPath = AppContext.BaseDirectory };
        await using var towns = new OpenTowns(options, TownFolder.OfUser);
        await using var app = Build(options, opening, towns);
        app.Urls.Add(FreeUrl(port));
        await app.StartAsync(cancel);
        var first = await opening;
        if (first.Town is not { } town)
        {
            ReadTown.Complain(townPath ?? "the demo town", first.Problems);
            return ExitCode.BadInput;
        }

        using var closing = town;
        if (first.Held is not null)
        {
            await Console.Error.WriteLineAsync(first.Problems[0].Message.AsMemory(), cancel);
        }

        await Console.Out.WriteLineAsync($"Duskwright is at {app.Urls.First()}  (Ctrl+C ends it)".AsMemory(), cancel);
        await app.WaitForShutdownAsync(cancel);
        return ExitCode.Fine;
    }

    /// <summary>Ends an app: its pages are told first, so that none is cut off in the middle of a word.</summary>
    /// <param name="app">The app.</param>
    /// <returns>When it is ended.</returns>
    internal static async Task EndAsync(WebApplication app)
    {
        using var patience = new CancellationTokenSource(LongestGoodbye);
        await app.StopAsync(patience.Token);
        await app.DisposeAsync();
    }

    private static string FreeUrl(int wished)
    {
        try
        {
            using var probe = new TcpListener(IPAddress.Loopback, wished);
            probe.Start();
            return $"http://127.0.0.1:{wished}";
        }
        catch (SocketException)
        {
            return AnyPort;
        }
    }
}
