using Journal.Core.Model;

namespace Journal.Core.Tests.Parsing;

public sealed class DestinationTests
{
    [Fact]
    public void Destinations_EveryKindAndKey_IsRead()
    {
        using var journal = new JournalOnDisk();
        journal.Write("journal.yaml", """
            title: The Lean-to
            destinations:
              disk: {folder: /srv/www/bench}
              host: {sftp: bench.example.org, port: 2222, user: wren, folder: /www//bench/, key: ~/.ssh/bench, host-key: "SHA256:AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA", known-hosts: hosts}
              page: {git: "ssh://wren@example.org/bench.git", branch: pages, folder: docs}
              store: {s3: bench-book, region: eu-west-1, service: "https://store.example.org", folder: bench, profile: shed}
            """);

        var reading = journal.Read();

        Assert.Empty(JournalOnDisk.Lines(reading.Problems));
        Assert.Equal(
            [
                new FolderDestination(new("disk"), "/srv/www/bench"),
                new SftpDestination(new("host"), "bench.example.org", "/www/bench") { Port = 2222, User = "wren", Key = "~/.ssh/bench", HostKey = "SHA256:AAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAAA", KnownHosts = "hosts" },
                new GitDestination(new("page"), "ssh://wren@example.org/bench.git", "pages", "docs"),
                new S3Destination(new("store"), "bench-book", "bench") { Region = "eu-west-1", Service = new Uri("https://store.example.org"), Profile = "shed" },
            ],
            reading.Journal!.Destinations);
    }

    [Theory]
    [InlineData("{sftp: \"wren@example.org\"}", "not-a-choice")]
    [InlineData("{sftp: example.org, port: 70000}", "not-a-number")]
    [InlineData("{sftp: example.org, host-key: \"MD5:aa\"}", "not-a-choice")]
    [InlineData("{git: a.git, folder: ../b}", "not-a-choice")]
    [InlineData("{s3: a, folder: /b}", "not-a-choice")]
    [InlineData("{s3: a, folder: 'b\\c'}", "not-a-choice")]
    [InlineData("{sftp: example.org, password: hush}", "unknown-key")]
    [InlineData("{s3: a, secret-key: hush}", "unknown-key")]
    [InlineData("{git: \"https://abcdefghijklmnopqrstuv@example.org/a.git\"}", "secret-in-journal")]
    [InlineData("www", "not-keys")]
    public void Destination_Faulty_IsAProblemThatNeverRepeatsASecret(string written, string code)
    {
        using var journal = new JournalOnDisk();
        journal.Write("journal.yaml", $"title: A\ndestinations:\n  place: {written}\n");

        var problem = Assert.Single(journal.Read().Problems);

        Assert.Equal((code, 3), (problem.Kind.Code, problem.Place.Line));
        Assert.DoesNotContain("hush", problem.Message + problem.Remedy, StringComparison.Ordinal);
        Assert.DoesNotContain("abcdefghij", problem.Message + problem.Remedy, StringComparison.Ordinal);
    }
}
