using System.Net;
using System.Net.NetworkInformation;
using System.Net.Sockets;
using System.Security.Cryptography;
using System.Text;
using Duskwright.Plan;
using Duskwright.Plan.Checks;
using Duskwright.Towns;

namespace Duskwright.Serve;

/// <summary>The way in for a phone or tablet in the house: shut until the maker opens it at the desk, open to devices that bring a code used once.</summary>
/// <param name="options">Paths of the host.</param>
/// <param name="town">The open town.</param>
/// <param name="homes">The addresses of this machine in the house; none for those it has.</param>
/// <param name="usualPort">The port that a town takes that has had none, where it is free; 0 for any.</param>
public sealed class PhoneDoor(WebApplicationOptions options, OpenTown town, Func<IReadOnlyList<IPAddress>>? homes = null, int usualPort = 0) : IAsyncDisposable
{
    /// <summary>Wrong codes after which a code is worth nothing any more.</summary>
    public const int MostGuesses = 5;

    private const int CodeDigits = 8;
    private const int TokenBytes = 32;
    private readonly Lock _gate = new();
    private readonly HashSet<string> _admitted = [];
    private WebApplication? _app;
    private int _guesses;

    /// <summary>Raised when it opens, shuts, lets somebody in or makes another code.</summary>
    public event Action? Changed;

    /// <summary>The address to open on the device, without the code; none while it is shut.</summary>
    public string? Address { get; private set; }

    /// <summary>The code that lets one device in; none while it is shut or where the code was used or guessed at too often.</summary>
    public string? Code { get; private set; }

    /// <summary>Whether the last code is void because it was guessed at too often.</summary>
    public bool IsGuessedAt { get; private set; }

    /// <summary>Whether devices may look at the town and change nothing.</summary>
    public bool LookOnly { get; private set; }

    /// <summary>How many devices are in.</summary>
    public int Devices
    {
        get
        {
            lock (_gate)
            {
                return _admitted.Count;
            }
        }
    }

    /// <summary>Why the codes on labels printed before lead nowhere, in words; none while it is shut, or stands where it stood.</summary>
    public string? Elsewhere { get; private set; }

    /// <summary>Opens it to the network of the house, where it stood before if it can.</summary>
    /// <param name="lookOnly">Whether devices may look and change nothing.</param>
    /// <returns>What kept it shut, or its address from being remembered.</returns>
    public async Task<ItemList<Problem>> OpenAsync(bool lookOnly)
    {
        await ShutAsync();
        if ((homes ?? Homes)() is not { Count: > 0 } addresses)
        {
            return [new Problem("", "no-network", "This machine is in no network of a house.", "Connect it to the same Wi-Fi as the phone.")];
        }

        var before = RememberedDoors.Of(town.Home, town.FilePath);
        var wished = before.Count > 0 ? before.Select(b => b.Port).Distinct().ToList() : [RememberedDoors.IsOfAnother(town.Home, town.FilePath, usualPort) ? 0 : usualPort];
        var port = wished.FirstOrDefault(p => IsFree(addresses[0], p));
        var app = ServeApp.BuildForPhones(options, lookOnly ? town.ToLookAt() : town, this, addresses);
        foreach (var address in addresses)
        {
            app.Urls.Add($"http://{new IPEndPoint(address, IsFree(address, port) ? port : 0)}");
        }

        await app.StartAsync();
        (_app, Address, LookOnly) = (app, app.Urls.First(), lookOnly);
        Elsewhere = Moved(before, new Uri(Address));
        NewCode();
        return Remembered(new Uri(Address));
    }

    /// <summary>Makes a code for one more device.</summary>
    public void NewCode()
    {
        lock (_gate)
        {
            Code = string.Concat(Enumerable.Range(0, CodeDigits).Select(_ => RandomNumberGenerator.GetInt32(10)));
            (_guesses, IsGuessedAt) = (0, false);
        }

        Changed?.Invoke();
    }

    /// <summary>Sends every device out and shuts it.</summary>
    /// <returns>When it is shut.</returns>
    public async Task ShutAsync()
    {
        var app = _app;
        lock (_gate)
        {
            _admitted.Clear();
            (_app, Address, Code, Elsewhere) = (null, null, null, null);
        }

        if (app is not null)
        {
            await ServeApp.EndAsync(app);
            Changed?.Invoke();
        }
    }

    /// <summary>Lets a device in that brings the code, once.</summary>
    /// <param name="code">What it brings.</param>
    /// <returns>The token by which it is known from now on; none where the code is wrong, used or void.</returns>
    public string? Admit(string code)
    {
        string? token = null;
        lock (_gate)
        {
            if (Code is null)
            {
                return null;
            }

            if (CryptographicOperations.FixedTimeEquals(Encoding.UTF8.GetBytes(code), Encoding.UTF8.GetBytes(Code)))
            {
                token = Convert.ToHexString(RandomNumberGenerator.GetBytes(TokenBytes));
                _admitted.Add(token);
                Code = null;
            }
            else if (++_guesses >= MostGuesses)
            {
                (Code, IsGuessedAt) = (null, true);
            }
        }

        Changed?.Invoke();
        return token;
    }

    /// <summary>Whether a device was let in.</summary>
    /// <param name="token">What it carries.</param>
    /// <returns>True where it was.</returns>
    public bool Knows(string? token)
    {
        lock (_gate)
        {
            return token is not null && _admitted.Contains(token);
        }
    }

    /// <inheritdoc/>
    public async ValueTask DisposeAsync() => await ShutAsync();

    // Printed labels name the address whole.
    private static string? Moved(ItemList<Uri> before, Uri now) =>
        before is not [var first, ..] ? null
        : first.Port != now.Port ? $"Another program has port {first.Port}, at which this town was found before, so the codes on labels printed then lead nowhere. Shut the door, end that program and let the phone in again; or print the labels again."
        : before.Contains(now) ? null
        : $"This machine has another address in the house than before ({before[^1].Host}), so the codes on labels printed then lead nowhere. Let the router give it the old one, or print the labels again.";

    private static bool IsFree(IPAddress address, int port)
    {
        try
        {
            using var probe = new TcpListener(address, port);
            probe.Start();
            return true;
        }
        catch (SocketException)
        {
            return false;
        }
    }

    private ItemList<Problem> Remembered(Uri address)
    {
        try
        {
            RememberedDoors.Remember(town.Home, town.FilePath, address);
            return [];
        }
        catch (Exception refused) when (refused is IOException or UnauthorizedAccessException)
        {
            return [new Problem("", "not-remembered", $"The door is open; its address could not be kept for the next time: {refused.Message}", "Look at the folder of your towns.")];
        }
    }

    // Addresses that no router passes on (RFC 1918, RFC 3927), so that the door opens to the house and not to the world.
    private static List<IPAddress> Homes() =>
        [.. NetworkInterface.GetAllNetworkInterfaces()
            .Where(n => n.OperationalStatus == OperationalStatus.Up && n.NetworkInterfaceType != NetworkInterfaceType.Loopback)
            .SelectMany(n => n.GetIPProperties().UnicastAddresses)
            .Select(u => u.Address)
            .Where(a => a.AddressFamily == AddressFamily.InterNetwork && OfAHouse(a.GetAddressBytes()))];

    private static bool OfAHouse(byte[] b) => b[0] == 10 || (b[0] == 172 && b[1] is >= 16 and < 32) || (b[0] == 192 && b[1] == 168) || (b[0] == 169 && b[1] == 254);
}
