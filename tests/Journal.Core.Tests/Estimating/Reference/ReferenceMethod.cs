namespace Journal.Core.Tests.Estimating.Reference;

/// <summary>A part to forecast.</summary>
/// <param name="Operations">Those foreseen; none where nothing is known of them.</param>
/// <param name="Pieces">q.</param>
/// <param name="Guess">The guess that counts, in hours as written.</param>
/// <param name="IsGuessForOnePiece">Whether that is for one piece.</param>
/// <param name="Like">The finished part that it is like.</param>
internal sealed record PartToForecast(string[] Operations, int Pieces, double? Guess, bool IsGuessForOnePiece = false, PastPart? Like = null);

/// <summary>
/// The method of docs/estimating.md in plain arrays and loops, written from that page alone: what past parts teach, and the
/// middle, shared luck and scatter of a part to come.
/// </summary>
internal sealed class ReferenceMethod
{
    private readonly PastPart[] past;
    private readonly double[] w;
    private readonly double lambda = double.NaN;

    public ReferenceMethod(PastPart[] past, bool isLuckInHabit = false)
    {
        this.past = past;
        var n = past.Length;

        // Recency
        w = new double[n];
        for (var i = 0; i < n; i++)
        {
            w[i] = Math.Pow(2, -(n - (i + 1)) / 40.0);
        }

        // Quantity, from operation times reckoned with b = 0
        if (past.Any(part => part.Pieces > 1))
        {
            double over = 0, under = 100;
            for (var i = 0; i < n; i++)
            {
                var logPieces = Math.Log(past[i].Pieces);
                over += w[i] * logPieces * (Math.Log(past[i].Hours) - Math.Log(TypicalOfPast(i)));
                under += w[i] * logPieces * logPieces;
            }

            Repeat = Math.Clamp(over / under, -0.51, 0);
        }

        // Reference
        var typical = new double[n];
        for (var i = 0; i < n; i++)
        {
            typical[i] = TypicalOfPast(i);
        }

        var guessed = Enumerable.Range(0, n).Where(i => past[i].Guess is not null).ToArray();
        if (guessed.Length > 0)
        {
            lambda = Math.Exp(ReferenceColumn.Median([.. guessed.Select(i => Math.Log(past[i].Guess!.Value / typical[i]))]));
        }

        WithGuess = new ReferenceColumn(
            ReferenceConstants.WithGuess,
            [.. guessed.Select(i => w[i])],
            [.. guessed.Select(i => LogReference(past[i].Guess!.Value, typical[i]))],
            [.. guessed.Select(i => past[i].Hours)],
            isLuckInHabit);
        Without = new ReferenceColumn(
            ReferenceConstants.Without, w, [.. typical.Select(hours => Math.Log(hours))], [.. past.Select(part => part.Hours)], isLuckInHabit);
        Typical = typical;
    }

    /// <summary>b of a repeat.</summary>
    public double Repeat { get; }

    /// <summary>Q of each past part, its own hours left out.</summary>
    public double[] Typical { get; }

    public double Lambda => lambda;

    public ReferenceColumn WithGuess { get; }

    public ReferenceColumn Without { get; }

    public ReferenceColumn ColumnOf(bool hasGuess) => hasGuess ? WithGuess : Without;

    /// <summary>T(q) of a part to come.</summary>
    public double TimesOne(int pieces) => Math.Pow(pieces, 1 + Repeat);

    /// <summary>exp(t_o); all alike before any part is finished.</summary>
    public double TimeOf(string operation) => past.Length == 0 ? 1 : Math.Exp(LogTime(operation, leaveOut: -1));

    /// <summary>The guess for all pieces of a part to come, in hours.</summary>
    public double? GuessOf(PartToForecast part) => part.Guess * (part.IsGuessForOnePiece ? TimesOne(part.Pieces) : 1);

    /// <summary>μ.</summary>
    public double Middle(PartToForecast part)
    {
        var guess = GuessOf(part);
        double x;
        if (guess is { } hours)
        {
            x = double.IsNaN(lambda) ? Math.Log(hours) : LogReference(hours, TypicalOf(part.Operations, part.Pieces, leaveOut: -1));
        }
        else
        {
            x = Math.Log(TypicalOf(part.Operations, part.Pieces, leaveOut: -1));
        }

        var column = ColumnOf(guess is not null);
        var middle = column.Middle(x);
        if (part.Like is { } like)
        {
            var k = guess is { } g && like.Guess is { } otherGuess
                ? g * like.Hours / otherGuess
                : like.Hours * TimesOne(part.Pieces) / TimesOne(like.Pieces);
            middle += column.Constants.LikePull * (Math.Log(k) - middle);
        }

        return middle;
    }

    private double LogReference(double guess, double typical) => 0.9 * Math.Log(guess) + 0.1 * Math.Log(lambda * typical);

    private double TypicalOfPast(int i) => past.Length == 1 ? past[0].Hours : TypicalOf(past[i].Operations, past[i].Pieces, leaveOut: i);

    private double TypicalOf(string[] operations, int pieces, int leaveOut)
    {
        if (operations.Length > 0)
        {
            var sum = 0.0;
            foreach (var operation in operations)
            {
                sum += Math.Exp(LogTime(operation, leaveOut));
            }

            return TimesOne(pieces) * sum;
        }

        double over = 0, under = 0;
        for (var i = 0; i < past.Length; i++)
        {
            if (i != leaveOut)
            {
                over += w[i] * Math.Log(past[i].Hours / TimesOne(past[i].Pieces));
                under += w[i];
            }
        }

        return TimesOne(pieces) * Math.Exp(over / under);
    }

    private double LogTime(string operation, int leaveOut)
    {
        double sumAll = 0, weightAll = 0, sum = 0, weight = 0;
        for (var i = 0; i < past.Length; i++)
        {
            for (var o = 0; i != leaveOut && o < past[i].Operations.Length; o++)
            {
                var l = Math.Log(past[i].HoursBy[o] / TimesOne(past[i].Pieces));
                sumAll += w[i] * l;
                weightAll += w[i];
                if (past[i].Operations[o] == operation)
                {
                    sum += w[i] * l;
                    weight += w[i];
                }
            }
        }

        return (sum + 5 * sumAll / weightAll) / (weight + 5);
    }
}
