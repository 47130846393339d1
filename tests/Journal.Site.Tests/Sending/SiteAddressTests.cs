using CsCheck;
using Journal.Site.Sending;

namespace Journal.Site.Tests.Sending;

public sealed class SiteAddressTests
{
    // Pieces that paths of all systems are made of, the awkward ones among them.
    private static readonly Gen<string> Piece = Gen.OneOf("a", "photos", "..", ".", "", "/", "\\", "C:", "c:\\", "\\\\server\\share", "CON", "x.html", " ", "a.", ".. ", "a:b", "~", "\0", "\r\n", "é", "%2e%2e");

    private static readonly Gen<string> Address = Gen.Select(Piece.Array[0, 6], Gen.OneOf("/", "", "\\"), (pieces, join) => string.Join(join, pieces));

    [Fact]
    public void SafeAddress_OfAnyPieces_StaysInTheFolderOnEverySystem() => Address.Sample(
        address =>
        {
            if (!SiteAddress.IsSafe(address))
            {
                Assert.Throws<ArgumentException>(() => SiteAddress.PathIn("/srv/www", address));
                return;
            }

            Assert.StartsWith("/srv/www/", Path.GetFullPath(SiteAddress.PathIn("/srv/www", address)), StringComparison.Ordinal);
            Assert.StartsWith(@"D:\www\", OnWindows(@"D:\www", address), StringComparison.Ordinal);
        },
        iter: 20_000);

    [Theory]
    [InlineData("index.html")]
    [InlineData("drill/entry/2025-10-03-boring.html")]
    [InlineData("photos/0a1b2c3d4e5f60718293a4b5-480.webp")]
    [InlineData(".sent-site.json")]
    public void AddressOfASite_IsSafe(string address) => Assert.True(SiteAddress.IsSafe(address));

    [Theory]
    [InlineData("index.html", false)]
    [InlineData("photos/0a1b2c3d4e5f60718293a4b5-480.webp", true)]
    [InlineData("look/style.0a1b2c3d4e5f6071.css", true)]
    [InlineData("drill/entry/2025-10-03-boring.html", false)]
    [InlineData("lesson/deadbeef.html", false)]
    public void Label_NamedByContent_MayBeKeptForAYear(string address, bool isLong)
    {
        Assert.Equal(isLong, FileHeaders.Of(address).CacheControl.Contains("immutable", StringComparison.Ordinal));
        Assert.DoesNotContain("octet-stream", FileHeaders.Of(address).ContentType, StringComparison.Ordinal);
    }

    // How Windows would read it: both slashes part names, dots and spaces at the end of a name are dropped, a drive or a root begins anew.
    private static string OnWindows(string folder, string address)
    {
        var names = new List<string>();
        if (address.Contains(':', StringComparison.Ordinal) || address[0] is '/' or '\\')
        {
            return address;
        }

        foreach (var name in address.Split('/', '\\').Select(name => name is ".." ? name : name.TrimEnd(' ', '.') is "" && name.Length > 0 ? name.TrimEnd(' ') : name.TrimEnd(' ', '.')))
        {
            if (name == "..")
            {
                if (names.Count == 0)
                {
                    return "outside";
                }

                names.RemoveAt(names.Count - 1);
            }
            else if (name is not ("" or "."))
            {
                names.Add(name);
            }
        }

        return names.Count == 0 ? folder : folder + "\\" + string.Join('\\', names);
    }
}
