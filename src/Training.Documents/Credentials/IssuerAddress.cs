namespace Training.Documents.Credentials;

/// <summary>Who issues: one public address, and every address and name of the issuer that follows from it.</summary>
public sealed record IssuerAddress
{
    /// <param name="address">Absolute, http or https, without user, query and fragment.</param>
    /// <exception cref="ArgumentException">It is another address than that.</exception>
    public IssuerAddress(Uri address)
    {
        var isPlain = address is { IsAbsoluteUri: true, UserInfo: "", Query: "", Fragment: "" } && (address.Scheme == Uri.UriSchemeHttp || address.Scheme == Uri.UriSchemeHttps);
        if (!isPlain) throw new ArgumentException($"{address} is not a plain web address.", nameof(address));
        Address = address.AbsolutePath.EndsWith('/') ? address : new(address.AbsoluteUri + "/");
    }

    /// <summary>The public address, with a slash at its end.</summary>
    public Uri Address { get; }

    /// <summary>
    /// The identifier that every token names its issuer by: <c>did:web</c> and the host; a port is written <c>%3A</c> and its number, a
    /// folder after a colon (did:web Method Specification, "Method-specific identifier").
    /// </summary>
    public string Did
    {
        get
        {
            var host = Address.IsDefaultPort ? Address.IdnHost : $"{Address.IdnHost}:{Address.Port}";
            var folders = Address.AbsolutePath.Split('/', StringSplitOptions.RemoveEmptyEntries);
            return string.Join(':', [$"did:web:{Uri.EscapeDataString(host)}", .. folders]);
        }
    }

    /// <summary>Where the status list of one purpose is served.</summary>
    public Uri StatusListPage(StatusPurpose purpose) => new(Address, $"status/{purpose.Name()}");

    /// <summary>Where the public part of one key is served as a JSON Web Key: what the <c>kid</c> of an Open Badge leads to.</summary>
    public Uri KeyPage(string kid) => new(Address, $"keys/{kid}");

    /// <summary>The name of one key in the DID document: the DID, <c>#</c> and its <c>kid</c>.</summary>
    public string KeyName(string kid) => $"{Did}#{kid}";
}
