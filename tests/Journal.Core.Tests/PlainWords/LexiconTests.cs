using Journal.Core.Model;
using Journal.Core.Trade;
using YamlDotNet.RepresentationModel;

namespace Journal.Core.Tests.PlainWords;

/// <summary>The words of <c>shared/plain-words.yaml</c>.</summary>
public sealed class LexiconTests
{
    private static readonly YamlNode Root = SharedData.Load("plain-words.yaml");

    [Fact]
    public void EveryList_SaysWhereItsWordsComeFrom()
    {
        foreach (var group in new[] { "operations", "cues", "causes", "outcomes", "by-object" })
        {
            Assert.All(Root.Get(group).Pairs(), list => Assert.NotEmpty(list.Value.Get("from").Text()));
        }

        Assert.All(new[] { "units", "numbers", "irregular", "not-the-operation", "ordinary", "short", "not-names" }, list => Assert.NotEmpty(Root.Get(list).Get("from").Text()));
    }

    [Fact]
    public void EveryOperationCauseAndOutcome_IsAWordOfTheVocabulary()
    {
        Assert.All(Root.Get("operations").Pairs(), list => Assert.True(VocabularyLoader.Shared.Operations.Has(new(list.Key)), list.Key));
        Assert.All(Root.Get("causes").Pairs(), list => Assert.True(VocabularyLoader.Shared.Causes.Has(new(list.Key)), list.Key));
        Assert.All(Root.Get("outcomes").Pairs(), list => Assert.True(EnumNames.TryFind<Outcome>(list.Key, out _), list.Key));
    }

    [Fact]
    public void EveryOperationOfTheVocabulary_CanBeSaid() =>
        Assert.All(VocabularyLoader.Shared.Operations.Ids, id => Assert.Contains(Root.Get("operations").Pairs(), list => list.Key == id.Value));
}
