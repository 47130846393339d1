using System.Collections;
using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>A lesson like another.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Nearness">The cosine between the two, 0 to 1.</param>
public sealed record SimilarLesson(LessonFigure Lesson, double Nearness);

/// <summary>
/// Which lessons are like which, by the cosine of their weighted terms (<see cref="TermSpace"/>). An inverted index gives the lessons
/// that share a term. Terms are followed from the most telling down until enough lessons have come up, and only those are compared
/// (index elimination: Manning, Raghavan and Schütze, 7.1.2), so that each lesson asks about as many others in a long journal as in a
/// short one.
/// </summary>
public sealed class SimilarLessons
{
    /// <summary>
    /// The least nearness that is shown. Of the pairs of lessons in the demonstration journal the middle one has 0.01, and one in fifty
    /// reaches this; below it, what two lessons share is a machine, a material or a common word.
    /// </summary>
    public const double Least = 0.16;

    private const int MostShown = 4;

    /// <summary>A journal of a hundred lessons is compared in full.</summary>
    private const int MostFollowed = 300;

    private readonly IReadOnlyList<LessonFigure> lessons;
    private readonly TermVector[] vectors;
    private readonly int[][] holders;
    private readonly Dictionary<Id<Lesson>, int> places;

    private SimilarLessons(IReadOnlyList<LessonFigure> lessons)
    {
        this.lessons = lessons;
        places = lessons.Index().ToDictionary(lesson => lesson.Item.Id, lesson => lesson.Index);
        List<Dictionary<string, int>> terms = [.. lessons.Select(LessonTerms.Of)];
        var space = new TermSpace(terms);
        vectors = [.. terms.Select(space.Weigh)];
        holders = Holders(vectors, space.Terms);
    }

    /// <summary>The likeness among these lessons, each of which has an id of its own.</summary>
    public static SimilarLessons Of(IReadOnlyList<LessonFigure> lessons) => new(lessons);

    /// <summary>At most four lessons like this one, the nearest first, then by id; none where nothing is near.</summary>
    public IReadOnlyList<SimilarLesson> To(Id<Lesson> lesson)
    {
        var place = places[lesson];
        var nearest = new List<SimilarLesson>(MostShown + 1);
        var spread = vectors[place].Spread(holders.Length);
        foreach (var other in Candidates(place))
        {
            if (vectors[other].Cosine(spread) is >= Least and var nearness)
            {
                Place(nearest, lessons[other], nearness);
            }
        }

        return nearest;
    }

    private static void Place(List<SimilarLesson> nearest, LessonFigure lesson, double nearness)
    {
        var place = nearest.Count;
        while (place > 0 && (nearness > nearest[place - 1].Nearness || (nearness == nearest[place - 1].Nearness && lesson.Id.CompareTo(nearest[place - 1].Lesson.Id) < 0)))
        {
            place--;
        }

        if (place < MostShown)
        {
            nearest.Insert(place, new SimilarLesson(lesson, nearness));
            nearest.RemoveRange(Math.Min(nearest.Count, MostShown), Math.Max(0, nearest.Count - MostShown));
        }
    }

    private List<int> Candidates(int place)
    {
        var (found, seen, followed) = (new List<int>(), new BitArray(lessons.Count) { [place] = true }, 0);
        foreach (var term in vectors[place].Heaviest)
        {
            foreach (var other in holders[term].AsSpan(0, Math.Min(holders[term].Length, MostFollowed - followed)))
            {
                if (!seen[other])
                {
                    seen[other] = true;
                    found.Add(other);
                }
            }

            followed += holders[term].Length;
            if (followed >= MostFollowed)
            {
                break;
            }
        }

        return found;
    }

    private static int[][] Holders(TermVector[] vectors, int terms)
    {
        var holders = Enumerable.Range(0, terms).Select(_ => new List<int>()).ToArray();
        foreach (var (place, vector) in vectors.Index())
        {
            foreach (var term in vector.Terms)
            {
                holders[term].Add(place);
            }
        }

        return [.. holders.Select(list => list.ToArray())];
    }
}
