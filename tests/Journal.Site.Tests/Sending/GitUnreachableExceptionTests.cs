using Journal.Site.Sending;

namespace Journal.Site.Tests.Sending;

public class GitUnreachableExceptionTests
{
    // As git 2.39 with curl and OpenSSH says it.
    [Theory]
    [InlineData("fatal: unable to access 'https://example.invalid/': Could not resolve host: example.invalid", true)]
    [InlineData("ssh: connect to host 127.0.0.1 port 9: Connection refused fatal: Could not read from remote repository.", true)]
    [InlineData("fatal: the remote end hung up unexpectedly", true)]
    [InlineData("git@example.org: Permission denied (publickey). fatal: Could not read from remote repository.", false)]
    [InlineData("fatal: unable to access 'https://example.org/': The requested URL returned error: 403", false)]
    [InlineData("! [rejected] sending -> site (fetch first)", false)]
    public void IsSaidBy_OnlyWhatAnotherTryMayMend(string complaint, bool isUnreachable) => Assert.Equal(isUnreachable, GitUnreachableException.IsSaidBy(complaint));
}
