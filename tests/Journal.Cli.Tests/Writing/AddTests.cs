namespace Journal.Cli.Tests.Writing;

public class AddTests
{
    [Fact]
    public void Add_Part_GoesBehindTheOthers()
    {
        using var bench = new AtTheBench();
        var before = bench.Text("drill/build.yaml");

        var added = bench.Ask("add", "part", "lever", "--title", "Lever, long", "--quantity", "2", "--material", "brass", "--guess", "3h");

        Assert.Equal(0, added.Status);
        Assert.Equal(before + "\n  - {id: lever, title: \"Lever, long\", material: brass, quantity: 2, guess: 3h}", bench.Text("drill/build.yaml"));
        Assert.Empty(bench.Problems());
    }

    // The build begun last is the one that its parts are added to; the message says so.
    [Fact]
    public void Add_PartAfterABuild_GoesIntoThatBuild_AndSaysSo()
    {
        using var bench = new AtTheBench();
        Assert.Equal("Under way now: Fan engine (`fan-engine`).\n", bench.Ask("add", "build", "fan-engine").Error);

        var added = bench.Ask("add", "part", "cylinder");

        Assert.Equal("Taken for Fan engine, the last worked on of the builds under way. For another say `--build drill`.\nAdded to Fan engine: the part `cylinder`.\n", added.Error);
        Assert.Contains("{id: cylinder}", bench.Text("fan-engine/build.yaml"), StringComparison.Ordinal);
        Assert.StartsWith("Fan engine\n", bench.Ask("next").Out, StringComparison.Ordinal);
    }

    [Fact]
    public void Add_Part_ToAListInBrackets()
    {
        using var bench = new AtTheBench();

        bench.Ask("add", "part", "screw", "--build", "vice");

        Assert.Equal("title: Toolmaker's vice\nstatus: planned\nparts: [{id: jaw}, {id: screw}]\n", bench.Text("vice/build.yaml"));
    }

    [Fact]
    public void Add_Tool_ToTheCribOrANewOne()
    {
        using var bench = new AtTheBench();

        bench.Ask("add", "tool", "square", "--kind", "gauge", "--got", "given", "--cost", "12.50", "--need", "essential");
        Assert.EndsWith("\n- {id: square, kind: gauge, got: given, cost: 12.50, need: essential}", bench.Text("tools.yaml"), StringComparison.Ordinal);

        File.Delete(Path.Combine(bench.Disk.Folder, "tools.yaml"));
        bench.Ask("add", "tool", "file-one");
        Assert.Equal("- {id: file-one}\n", bench.Text("tools.yaml"));
    }

    [Fact]
    public void Add_Build_MakesItsFolder()
    {
        using var bench = new AtTheBench();

        bench.Ask("add", "build", "tap-wrench", "--units", "inch");

        Assert.Equal("title: Tap wrench\nstatus: under-way\nstarted: 2025-10-03\nunits: inch\n", bench.Text("tap-wrench/build.yaml"));
        Assert.Empty(bench.Problems());
    }

    [Fact]
    public void Add_Plan_AndAPartToIt_CanBeEstimated()
    {
        using var bench = new AtTheBench();

        Assert.Equal(Path.Combine(bench.Disk.Folder, "plans", "shaper.yaml") + "\n", bench.Ask("add", "plan", "shaper", "--title", "Hand shaper", "--start", "2027-01-09", "--part", "bed", "ram").Out);
        Assert.Equal(0, bench.Ask("add", "part", "slide", "--plan", "shaper", "--guess", "9h", "--like", "drill/head").Status);

        Assert.Equal("title: Hand shaper\nstart: 2027-01-09\nparts:\n  - {id: bed}\n  - {id: ram}\n  - {id: slide, guess: 9h, like: drill/head}\n", bench.Text("plans/shaper.yaml"));
        Assert.Empty(bench.Problems());
        Assert.Equal(0, bench.Ask("begin", "shaper").Status);
        Assert.Equal("Hand shaper has become a build. Add the part there, with `--build shaper`.\n", bench.Ask("add", "part", "lever", "--plan", "shaper").Error);
    }

    [Theory]
    [InlineData("There is already a build `drill`, and a plan becomes a build of the same name.", "plan", "drill", "--part", "bed")]
    [InlineData("`whole` means the build as a whole. Give the part another name.", "plan", "shaper", "--part", "whole")]
    [InlineData("`Bed` is not a valid id. Use lower-case words joined by hyphens, such as gib-screw.", "plan", "shaper", "--part", "Bed")]
    [InlineData("The part `bed` is named twice.", "plan", "shaper", "--part", "bed", "--part", "bed")]
    [InlineData("The name `lesson` is reserved by the site or by Windows. Choose another.", "plan", "lesson", "--part", "bed")]
    [InlineData("There is no part `drill/haed`. Did you mean `drill/head`?", "part", "bed", "--like", "drill/haed")]
    [InlineData("Use either `--plan` or `--build`, not both.", "part", "bed", "--plan", "shaper", "--build", "drill")]
    [InlineData("Bench drill already has a part `head`.", "part", "head")]
    [InlineData("There is no material `bras`. Did you mean `brass`?", "part", "knob", "--material", "bras")]
    [InlineData("There is already a tool `lathe`.", "tool", "lathe")]
    [InlineData("`--got` must be one of had, bought, made, borrowed, given, hired.", "tool", "square", "--got", "found")]
    [InlineData("There is already a build `drill`.", "build", "drill")]
    [InlineData("`Gib Screw` is not a valid id. Use lower-case words joined by hyphens, such as gib-screw. See `journal add part --help`.", "part", "Gib Screw")]
    public void Add_WhatCannotBe_IsRefused(string error, params string[] words)
    {
        using var bench = new AtTheBench();
        var before = bench.Text("drill/build.yaml") + bench.Text("tools.yaml");

        var added = bench.Ask(["add", .. words]);

        Assert.Equal((2, error + "\n"), (added.Status, added.Error));
        Assert.Equal(before, bench.Text("drill/build.yaml") + bench.Text("tools.yaml"));
    }

    [Theory]
    [InlineData("con")]
    [InlineData("plans")]
    [InlineData("index")]
    [InlineData("lesson")]
    public void Build_NameThatIsTaken_IsRefused(string name)
    {
        using var bench = new AtTheBench();

        var refused = bench.Ask("add", "build", name);

        Assert.Equal(2, refused.Status);
        Assert.Contains($"The name `{name}` is reserved", refused.Error, StringComparison.Ordinal);
        Assert.False(Directory.Exists(Path.Combine(bench.Disk.Folder, name)) && File.Exists(Path.Combine(bench.Disk.Folder, name, "build.yaml")));
    }

    [Theory]
    [InlineData("`--title` needs a value", "part", "lever", "--title", "")]
    [InlineData("`two` is not a whole number from 1 to 100000. Use digits", "part", "lever", "--quantity", "two")]
    [InlineData("`1000000` is not a whole number", "part", "lever", "--quantity", "1000000")]
    [InlineData("`19:10-20:40` is not a time", "part", "lever", "--guess", "19:10-20:40")]
    [InlineData("`--cost` needs an amount", "tool", "vice", "--cost", "99999999999999999999999")]
    public void WhatCheckWouldCallAnError_IsRefused(string why, params string[] words)
    {
        using var bench = new AtTheBench();

        var refused = bench.Ask(["add", .. words]);

        Assert.Equal(2, refused.Status);
        Assert.Contains(why, refused.Error, StringComparison.Ordinal);
        Assert.Empty(bench.Problems());
    }
}
