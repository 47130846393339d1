using Journal.Core.Model;

namespace Journal.Core.Figures;

/// <summary>A lesson worth reading before a job, and why.</summary>
/// <param name="Lesson">The lesson.</param>
/// <param name="Nearness">How much of what was asked it shares, 0 to 1, what few lessons have counting more.</param>
/// <param name="Operations">The operations that it shares.</param>
/// <param name="Materials">The materials that it shares.</param>
/// <param name="Parts">The parts that it was learned on, of those asked for.</param>
/// <param name="Tools">The tools that it shares.</param>
/// <param name="Named">What its words name though it was not learned on it, as ids of operations, materials or tools.</param>
public sealed record LessonToRead(
    LessonFigure Lesson,
    double Nearness,
    IReadOnlyList<Id<Operation>> Operations,
    IReadOnlyList<Id<MaterialFamily>> Materials,
    IReadOnlyList<PartRef> Parts,
    IReadOnlyList<Id<Tool>> Tools,
    IReadOnlyList<string> Named)
{
    /// <summary>
    /// What it has cost so far, on a scale on which an evening weighs more than a quarter of an hour but ten evenings do not drown
    /// the rest: 1 + ½ ln(1 + hours lost + times repeated). The formula is our own.
    /// </summary>
    internal double Weight => 1 + (Math.Log(1 + Lesson.MinutesLost.InHours + Lesson.Repeated.Count) / 2);
}

/// <summary>The few lessons worth reading before a job: ranked by how near they are and by what they have cost.</summary>
public sealed class LessonsToRead
{
    /// <summary>How many lessons <see cref="For"/> gives at most.</summary>
    public const int Few = 5;

    /// <summary>A lesson that shares less than this of what was asked, such as only the material, is about another job.</summary>
    private const double Least = 0.3;

    /// <summary>What was learned elsewhere and forgotten or heeded here is as near as what only speaks of it.</summary>
    private const double AsGoodAsNamed = 0.5;

    private readonly IReadOnlyList<(LessonFigure Lesson, HashSet<string> Words, HashSet<string> Stems)> lessons;

    private LessonsToRead(IReadOnlyList<LessonFigure> lessons) => this.lessons =
    [
        .. from lesson in lessons
           let words = TextTokens.Of(LessonTerms.Words(lesson)).ToHashSet()
           select (lesson, words, words.Select(WordStem.Of).ToHashSet()),
    ];

    /// <summary>Chooses among these lessons.</summary>
    public static LessonsToRead Of(IReadOnlyList<LessonFigure> lessons) => new(lessons);

    /// <summary>The few lessons for a job, the most worth reading first.</summary>
    public IReadOnlyList<LessonToRead> For(JobToCome job) => [.. Ranked(job).Take(Few)];

    /// <summary>
    /// All lessons near enough to a job: by nearness times weight, then the dearest in money, the newest, and by id. Nearness is the
    /// share of what was asked that the lesson has, each word counting by its rarity, ln(1 + lessons / lessons that have it). A lesson
    /// that only names a thing in its text has half of it, and a quarter where it uses another form of the word.
    /// </summary>
    public IReadOnlyList<LessonToRead> Ranked(JobToCome job)
    {
        var asked = Asked(job);
        var whole = asked.Sum(subject => subject.Rarity);
        if (whole <= 0)
        {
            return [];
        }

        return
        [
            .. lessons
                .Select(one => Read(one.Lesson, one.Words, one.Stems, asked, whole))
                .OfType<LessonToRead>()
                .OrderByDescending(read => read.Nearness * read.Weight)
                .ThenByDescending(read => read.Lesson.Money)
                .ThenByDescending(read => read.Lesson.Date)
                .ThenBy(read => read.Lesson.Id),
        ];
    }

    // Null where it is about another job.
    private static LessonToRead? Read(LessonFigure lesson, HashSet<string> words, HashSet<string> stems, IReadOnlyList<Subject> asked, double whole)
    {
        var shared = asked.Select(subject => (Subject: subject, Share: subject.IsShared(lesson) ? 1 : subject.IsSharedAgain(lesson) ? AsGoodAsNamed : subject.ShareNamed(words, stems))).Where(one => one.Share > 0).ToList();
        var nearness = shared.Sum(one => one.Share * one.Subject.Rarity) / whole;
        if (nearness < Least)
        {
            return null;
        }

        IReadOnlyList<Id<T>> Of<T>(SubjectKind kind) => [.. shared.Where(one => one.Subject.Kind == kind && one.Share == 1).Select(one => new Id<T>(one.Subject.Id))];
        var parts = Of<Part>(SubjectKind.Part).ToHashSet();
        return new LessonToRead(
            lesson,
            nearness,
            Of<Operation>(SubjectKind.Operation),
            Of<MaterialFamily>(SubjectKind.Material),
            [.. lesson.On.Parts.Where(part => parts.Contains(part.Part))],
            Of<Tool>(SubjectKind.Tool),
            [.. shared.Where(one => one.Share < 1 && !one.Subject.IsSharedAgain(lesson)).Select(one => one.Subject.Id)]);
    }

    // A part or tool that no lesson knows yet is left out: the rest of the job still has its lessons. An operation or a material
    // that none knows stays in, so that what is near in nothing else does not come up.
    private List<Subject> Asked(JobToCome job)
    {
        IEnumerable<(SubjectKind Kind, string Id)> subjects =
        [
            .. job.Operations.Distinct().Select(id => (SubjectKind.Operation, id.Value)),
            .. job.Materials.Distinct().Select(id => (SubjectKind.Material, id.Value)),
            .. job.Parts.Distinct().Select(id => (SubjectKind.Part, id.Value)),
            .. job.Tools.Distinct().Select(id => (SubjectKind.Tool, id.Value)),
        ];
        List<Subject> all = [.. subjects.Select(subject => Subject.Of(subject.Kind, subject.Id, lessons.Select(one => one.Lesson)))];
        var known = all.Where(subject => subject.IsKnown || subject.Kind is SubjectKind.Operation or SubjectKind.Material).ToList();
        return known.Count > 0 ? known : all;
    }

    private enum SubjectKind
    {
        Operation,
        Material,
        Part,
        Tool,
    }

    /// <summary>One thing that a job is about.</summary>
    /// <param name="Kind">What it is.</param>
    /// <param name="Id">Its id; of a part without the build, since lessons of like parts of other builds count.</param>
    /// <param name="Words">The words of its id, to be found in the text of lessons; none for a part.</param>
    /// <param name="IsKnown">Whether any lesson was learned on it, or repeated or heeded there.</param>
    /// <param name="Rarity">What it counts for: ln(1 + lessons / lessons learned on it), more than 0 where there are lessons.</param>
    private sealed record Subject(SubjectKind Kind, string Id, IReadOnlyList<string> Words, bool IsKnown, double Rarity)
    {
        /// <summary>A thing with its rarity among these lessons.</summary>
        public static Subject Of(SubjectKind kind, string id, IEnumerable<LessonFigure> lessons)
        {
            // A part's name is a common word of the shop as often as not: only having worked on it counts.
            var subject = new Subject(kind, id, kind == SubjectKind.Part ? [] : [.. TextTokens.Of(id)], IsKnown: false, Rarity: 0);
            var (all, having, again) = lessons.Aggregate((All: 0, Having: 0, Again: 0), (sum, lesson) => (sum.All + 1, sum.Having + (subject.IsShared(lesson) ? 1 : 0), sum.Again + (subject.IsSharedAgain(lesson) ? 1 : 0)));
            return subject with { IsKnown = having + again > 0, Rarity = Math.Log(1 + ((double)all / Math.Max(1, having))) };
        }

        /// <summary>Whether a lesson was learned on it.</summary>
        public bool IsShared(LessonFigure lesson) => IsOf(lesson.On);

        /// <summary>Whether a lesson was repeated or heeded on it; never for a material or a tool.</summary>
        public bool IsSharedAgain(LessonFigure lesson) => Kind is SubjectKind.Operation or SubjectKind.Part && lesson.Again.Any(IsOf);

        private bool IsOf(JobFacts on) => Kind switch
        {
            SubjectKind.Operation => on.Operations.Any(id => id.Value == Id),
            SubjectKind.Material => on.Materials.Any(material => material.Family.Value == Id),
            SubjectKind.Part => on.Parts.Any(part => part.Part.Value == Id),
            _ => on.Tools.Any(id => id.Value == Id),
        };

        /// <summary>How far a lesson's text names it: 0.5 where it has all its words, 0.25 where only other forms of them, else 0.</summary>
        /// <param name="words">The words of the lesson.</param>
        /// <param name="stems">The stems of those words.</param>
        public double ShareNamed(HashSet<string> words, HashSet<string> stems) =>
            Words.Count == 0 ? 0 : Words.All(words.Contains) ? 0.5 : Words.All(word => stems.Contains(WordStem.Of(word))) ? 0.25 : 0;
    }
}
