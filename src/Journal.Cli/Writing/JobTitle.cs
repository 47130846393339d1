using Journal.Cli.Wording;
using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Cli.Writing;

/// <summary>A job in words.</summary>
internal static class JobTitle
{
    /// <summary>“Head casting, boring”.</summary>
    public static string Of(TitleBook titles, Id<Build> build, string? part, string? operation) =>
        string.Join(", ", new[] { Part(titles, build, part), operation is null ? null : Casing.Lower(titles.Of(new Id<Operation>(operation))) }.OfType<string>());

    private static string Part(TitleBook titles, Id<Build> build, string? part) =>
        part is null or "whole" ? $"{titles.Of(build)} as a whole" : titles.Of(new PartRef(build, new(part)));
}
