namespace Training.Web.Settings;

/// <summary>Codes of what can be wrong with the settings.</summary>
public static class SettingsProblems
{
    /// <summary>A key that no setting has: {0} the key, {1} the keys there are at that place.</summary>
    public const string KeyUnknown = "settings.key-unknown";

    /// <summary>A required setting is missing: {0} the key as an environment variable.</summary>
    public const string Missing = "settings.missing";

    /// <summary>A setting that only the demo obeys: {0} the key as an environment variable.</summary>
    public const string DemoOnly = "settings.demo-only";

    /// <summary>A value that is none of a list: {0} the value, {1} the list.</summary>
    public const string ValueUnknown = "settings.value-unknown";

    /// <summary>A number outside its range, or none: {0} the value, {1} least, {2} greatest.</summary>
    public const string OutOfRange = "settings.out-of-range";

    /// <summary>A text that is too long: {0} greatest length.</summary>
    public const string TooLong = "settings.too-long";

    /// <summary>Not an absolute http or https address: {0} the value.</summary>
    public const string AddressInvalid = "settings.address-invalid";

    /// <summary>Not a time zone of this machine: {0} the value.</summary>
    public const string TimeZoneUnknown = "settings.time-zone-unknown";

    /// <summary>Not an IP address: {0} the value.</summary>
    public const string ProxyInvalid = "settings.proxy-invalid";

    /// <summary>A server engine without a connection string: {0} the engine.</summary>
    public const string ConnectionMissing = "settings.connection-missing";

    /// <summary>The database does not answer: {0} the engine, {1} what it said.</summary>
    public const string DatabaseUnreachable = "settings.database-unreachable";

    /// <summary>The address to listen on cannot be had: {0} what the machine said.</summary>
    public const string AddressInUse = "settings.address-in-use";

    /// <summary>A file that the setting names is not there. Arguments: its path.</summary>
    public const string FileMissing = "settings.file-missing";

    /// <summary>A mail server is set without an address that mails come from: {0} the value.</summary>
    public const string MailFromInvalid = "settings.mail-from-invalid";

    /// <summary>A folder that is not there: {0} its full path.</summary>
    public const string FolderMissing = "settings.folder-missing";
}
