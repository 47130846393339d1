using System.Reflection;
using Journal.Site.Pages;
using Journal.Site.Templates;
using Scriban.Runtime;

namespace Journal.Site.Tests.Templates;

public sealed class ViewAccessorTests
{
    // The table is written while compiling; reflection, which only this test uses, says what ought to stand in it.
    [Fact]
    public void Members_OfEveryRecordOfPagesAndCharts_AreItsPublicProperties()
    {
        var records = typeof(EntryPage).Assembly.GetTypes()
            .Where(type => type.Namespace is "Journal.Site.Pages" or "Journal.Site.Charts" && type.GetMethod("PrintMembers", BindingFlags.Instance | BindingFlags.NonPublic) is not null)
            .Where(type => type is { IsNested: false, IsAbstract: false, IsGenericType: false })
            .ToList();

        Assert.Contains(typeof(EntryPage), records);
        Assert.All(records, record => Assert.Equal(
            record.GetProperties(BindingFlags.Instance | BindingFlags.Public).Select(property => StandardMemberRenamer.Rename(property.Name)).Order(StringComparer.Ordinal),
            ViewAccessor.Of(record, [SiteViews.MembersOf]).GetMembers(null!, default, record).Order(StringComparer.Ordinal)));
    }

    [Theory]
    [InlineData(typeof(Exception))]
    [InlineData(typeof(FileInfo))]
    [InlineData(typeof(Core.Model.Entry))]
    public void Members_OfWhatIsNoModel_AreNone(Type type) => Assert.Empty(ViewAccessor.Of(type, [SiteViews.MembersOf]).GetMembers(null!, default, type));
}
