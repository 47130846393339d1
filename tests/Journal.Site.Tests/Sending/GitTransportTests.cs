using System.Diagnostics;
using Journal.Core.Model;
using Journal.Site.Sending;

namespace Journal.Site.Tests.Sending;

public sealed class GitTransportTests
{
    [Fact]
    public async Task Branch_GetsOneCommitPerChangeAndNoneWithout()
    {
        using var site = SiteOnDisk.WithPages(3);
        var (repository, order) = Bare(site);

        await site.Send(order: order);
        await site.Send(order: order);
        site.Put("drill/entry/e1.html", "edited").Drop("drill/entry/e2.html").Publish();
        await site.Send(order: order);

        Assert.Equal("2", Git(repository, "rev-list", "--count", "pages"));
        Assert.Equal("M\tdocs/.sent-site.json\nM\tdocs/drill/entry/e1.html\nD\tdocs/drill/entry/e2.html", Git(repository, "diff", "--name-status", "pages~1", "pages"));
        site.IsAt(Path.Combine(CheckOut(site, repository), "docs"));
    }

    [Fact]
    public async Task Commit_TellsTheDayAndThePenNameAndNoTimeOfDay()
    {
        using var site = SiteOnDisk.WithPages(1);
        var (repository, order) = Bare(site);

        await site.Send(order: order with { Maker = "Wren <x>" });

        Assert.Equal("Wren x <journal@site.invalid> 2025-10-03T12:00:00+00:00", Git(repository, "log", "-1", "--format=%an <%ae> %cI", "pages"));
    }

    [Fact]
    public async Task WhatElseIsInTheBranch_Stays()
    {
        using var site = SiteOnDisk.WithPages(1);
        var (repository, order) = Bare(site);
        var work = Path.Combine(site.Root, "work");
        Git(site.Root, "clone", "--quiet", repository, work);
        await File.WriteAllTextAsync(Path.Combine(work, "readme.md"), "mine\n");
        Git(work, "-c", "user.name=Wren", "-c", "user.email=wren@example.org", "checkout", "--quiet", "-b", "pages");
        Git(work, "add", "readme.md");
        Git(work, "-c", "user.name=Wren", "-c", "user.email=wren@example.org", "commit", "--quiet", "-m", "Mine");
        Git(work, "push", "--quiet", "origin", "pages");

        await site.Send(order: order);

        Assert.Equal("mine", Git(repository, "show", "pages:readme.md"));
        Assert.Equal("", Git(work, "status", "--porcelain"));
    }

    [Fact]
    public async Task FromAHook_TheHooksRepositoryIsLeftAlone()
    {
        using var site = SiteOnDisk.WithPages(1);
        var (repository, order) = Bare(site);
        var hooks = Path.Combine(site.Root, "hooks.git");
        Git(site.Root, "init", "--quiet", "--bare", hooks);
        Environment.SetEnvironmentVariable("GIT_DIR", hooks);
        try
        {
            await site.Send(order: order);
        }
        finally
        {
            Environment.SetEnvironmentVariable("GIT_DIR", null);
        }

        Assert.Equal("1", Git(repository, "rev-list", "--count", "pages"));
        Assert.Equal("", Git(hooks, "for-each-ref"));
    }

    [Fact]
    public async Task BrokenHalfWay_LeavesTheBranchAsItWas()
    {
        using var site = SiteOnDisk.WithPages(3);
        var (repository, order) = Bare(site);
        await site.Send(order: order);
        site.Fill(3, "two");

        await Assert.ThrowsAsync<SendingException>(() => site.Send(transport => new WatchedCarrier(transport) { Fail = step => step > 3 ? new IOException("Broken.") : null }, order));

        Assert.Equal("1", Git(repository, "rev-list", "--count", "pages"));
        await site.Send(order: order);
        site.IsAt(Path.Combine(CheckOut(site, repository), "docs"));
    }

    [Fact]
    public async Task RepositoryThatIsNotThere_IsSaid()
    {
        using var site = SiteOnDisk.WithPages(1);
        var order = site.Order with { Destination = new GitDestination(new("page"), Path.Combine(site.Root, "none.git"), "pages", "") };

        var refused = await Assert.ThrowsAsync<SendingException>(() => site.Send(order: order));

        Assert.Contains("none.git", refused.Message, StringComparison.Ordinal);
    }

    private static (string Repository, SendOrder Order) Bare(SiteOnDisk site)
    {
        var repository = Path.Combine(site.Root, "bench.git");
        Git(site.Root, "init", "--quiet", "--bare", repository);
        return (repository, site.Order with { Destination = new GitDestination(new("page"), repository, "pages", "docs") });
    }

    private static string CheckOut(SiteOnDisk site, string repository)
    {
        var seen = Path.Combine(site.Root, $"seen-{Guid.NewGuid():N}");
        Git(site.Root, "clone", "--quiet", "--branch", "pages", repository, seen);
        return seen;
    }

    private static string Git(string folder, params string[] words)
    {
        using var git = Process.Start(new ProcessStartInfo("git", words) { WorkingDirectory = folder, RedirectStandardOutput = true })!;
        var said = git.StandardOutput.ReadToEnd().TrimEnd('\n');
        git.WaitForExit();
        Assert.Equal(0, git.ExitCode);
        return said;
    }
}
