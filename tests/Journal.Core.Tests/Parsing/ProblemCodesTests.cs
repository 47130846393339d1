using System.Reflection;
using Journal.Core.Parsing.Problems;

namespace Journal.Core.Tests.Parsing;

public sealed class ProblemCodesTests
{
    [Fact]
    public void WithCode_EveryKindOfTheTable_IsFoundWithItsSeverity()
    {
        var kinds = typeof(ProblemTable).GetFields(BindingFlags.Public | BindingFlags.Static).Select(field => field.GetValue(null)).OfType<ProblemKind>().ToList();

        Assert.True(kinds.Count > 80);
        Assert.All(kinds, kind => Assert.Equal(kind.Severity, ProblemTable.WithCode(kind.Code)?.Severity));
        Assert.Null(ProblemTable.WithCode("no-such-code"));
    }
}
