using System.Security.Cryptography;
using System.Security.Cryptography.X509Certificates;

namespace Journal.Bench.Doors;

/// <summary>The maker's certificate, for <c>https</c> in the house.</summary>
/// <param name="Certificate">The certificate with its key.</param>
/// <param name="Names">The names that it is for.</param>
public sealed record BenchCertificate(X509Certificate2 Certificate, IReadOnlyList<string> Names)
{
    /// <summary>Reads a PEM file that holds a certificate and its key (RFC 7468).</summary>
    /// <exception cref="BenchException">The file cannot be read, holds no key, or is not good today.</exception>
    public static BenchCertificate Read(string file, DateTimeOffset now)
    {
        X509Certificate2 certificate;
        try
        {
            certificate = X509Certificate2.CreateFromPemFile(file);
        }
        catch (Exception e) when (e is CryptographicException or IOException or UnauthorizedAccessException or ArgumentException)
        {
            throw new BenchException($"{file} is not a certificate with its key in PEM form ({e.Message.TrimEnd('.')}). It needs both: BEGIN CERTIFICATE and BEGIN PRIVATE KEY.", e);
        }

        if (now < certificate.NotBefore || now > certificate.NotAfter)
        {
            using (certificate)
            {
                throw new BenchException(FormattableString.Invariant($"{file} is good from {certificate.NotBefore:yyyy-MM-dd} to {certificate.NotAfter:yyyy-MM-dd}, not today. Renew it."));
            }
        }

        return new BenchCertificate(certificate, [.. NamesOf(certificate)]);
    }

    private static IEnumerable<string> NamesOf(X509Certificate2 certificate) =>
        certificate.Extensions.OfType<X509SubjectAlternativeNameExtension>()
            .SelectMany(names => names.EnumerateDnsNames().Where(name => !name.Contains('*', StringComparison.Ordinal)).Concat(names.EnumerateIPAddresses().Select(PrivateAddress.Bracketed)))
            .Select(name => name.ToLowerInvariant())
            .Distinct();
}
