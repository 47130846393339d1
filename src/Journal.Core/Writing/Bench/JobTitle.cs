using Journal.Core.Model;
using Journal.Core.Wording;

namespace Journal.Core.Writing.Bench;

/// <summary>A job in words.</summary>
public static class JobTitle
{
    /// <summary>“Bench drill, Head casting, boring and reaming”.</summary>
    /// <param name="titles">Titles for ids.</param>
    /// <param name="build">The build.</param>
    /// <param name="part">The part's id, <c>whole</c>, or null.</param>
    /// <param name="operations">The operations' ids.</param>
    public static string Of(TitleBook titles, Id<Build> build, string? part, params IReadOnlyList<string> operations) =>
        $"{Part(titles, build, part)}{(operations.Count == 0 ? "" : $", {titles.InSentence([.. operations.Select(operation => new Id<Operation>(operation))])}")}";

    /// <summary>The same of a stint.</summary>
    public static string Of(TitleBook titles, Stint stint) => Of(titles, new(stint.Build), stint.Part, stint.Operation is { } operation ? [operation] : []);

    /// <summary>The same of a job in an entry.</summary>
    public static string Of(TitleBook titles, Id<Build> build, Job job) =>
        Of(titles, build, job.IsGeneral ? null : job.Parts[0].Part.Value, [.. job.Operations.Select(operation => operation.Value)]);

    private static string Part(TitleBook titles, Id<Build> build, string? part) =>
        part is null or "whole" ? $"{titles.Of(build)} as a whole" : $"{titles.Of(build)}, {titles.Of(new PartRef(build, new(part)))}";
}
