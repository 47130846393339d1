using Journal.Core.Model;
using System.Globalization;
using Journal.Core.PlainWords.Clauses;
using Journal.Core.PlainWords.Quantities;
using Journal.Core.PlainWords.Words;

namespace Journal.Core.PlainWords.Facts;

/// <summary>Reads speed, depth and feed. What is said in one breath is one setting.</summary>
internal sealed class SettingReader(Account account, TrialReader trials)
{
    private const int OneBreath = 2;
    private readonly List<ProposedSetting> settings = [];
    private int lastClause = -10;

    public IReadOnlyList<ProposedSetting> Settings => settings;

    public void Read(int index)
    {
        var clause = account.Clauses[index];
        if (!clause.IsTonight || trials.IsNear(index) || clause.HasAny(Cue.Document, Cue.Film) || account.Neighbours(clause).Any(other => other.Index < index && other.Has(Cue.Document) && account.Word(clause.First) is "set"))
        {
            return;
        }

        foreach (var quantity in clause.Quantities)
        {
            if (!clause.IsReal(quantity.First) || quantity.IsDeviation)
            {
                continue;
            }

            if (quantity.Kind == UnitKind.Speed || IsSpeed(clause, quantity))
            {
                var rpm = quantity.Value;
                Take(clause, index, setting => setting.Rpm is null, setting => setting with { Rpm = rpm });
            }
            else if (FeedOf(quantity) is { } feed)
            {
                Take(clause, index, setting => setting.Feed is null, setting => setting with { Feed = feed });
            }
            else if (DepthOf(clause, quantity) is { } depth)
            {
                Take(clause, index, setting => setting.Depth is null, setting => setting with { Depth = depth });
            }
        }

        ReadVerdict(clause, index);
    }

    private void Take(Clause clause, int index, Func<ProposedSetting, bool> isFree, Func<ProposedSetting, ProposedSetting> with)
    {
        var words = account.SpanOf(clause.First, clause.Next);
        if (settings.Count > 0 && index - lastClause <= OneBreath && isFree(settings[^1]))
        {
            var last = settings[^1];
            settings[^1] = with(last) with { Words = new(last.Words.Start, Math.Max(last.Words.End, words.End)) };
        }
        else
        {
            settings.Add(with(new ProposedSetting(words)));
        }

        lastClause = index;
    }

    // "speed was eight hundred", "dropped to two hundred": a round number without a unit.
    private bool IsSpeed(Clause clause, Quantity quantity) =>
        quantity is { Kind: UnitKind.None, IsFraction: false, Value: >= 40 and <= 6000 } && quantity.Value % 5 == 0
        && (clause.Hits.Exists(hit => hit.Cue == Cue.Speed && quantity.First - hit.Next is 0 or 1) || IsBesideFeed(clause, quantity));

    // "feed 2 in/min at 900".
    private bool IsBesideFeed(Clause clause, Quantity quantity) =>
        account.Word(quantity.First - 1) == "at" && quantity.Value >= 100 && quantity.Next >= clause.Next && clause.Quantities.Exists(other => other.Next < quantity.First && FeedOf(other) is not null);

    // "0.1 mm/rev", "four thou a rev", "120 mm a minute".
    private string? FeedOf(Quantity quantity)
    {
        if (quantity.Kind != UnitKind.Length)
        {
            return null;
        }

        var at = quantity.Next;
        if (account.Word(at) is not ("/" or "per" or "a" or "an"))
        {
            return null;
        }

        var per = account.Word(at + 1) switch
        {
            "rev" or "revolution" or "turn" => "rev",
            "min" or "minute" => "min",
            "tooth" => "tooth",
            _ => null,
        };
        return per is null ? null : string.Create(CultureInfo.InvariantCulture, $"{quantity.Length}/{per}");
    }

    private Length? DepthOf(Clause clause, Quantity quantity)
    {
        // "cut six millimetres off", "runs out 0.08 on the dial indicator", "measured 7.4 deep".
        if (account.Word(quantity.Next) == "off" || clause.Has(Cue.TinyFeature) || (account.Word(quantity.Next) == "deep" && clause.HasBefore(Cue.Gauged, quantity.First)))
        {
            return null;
        }

        var isLength = quantity.Kind == UnitKind.Length || (quantity.Kind == UnitKind.None && quantity.Value.Scale > 0);
        if (!isLength || clause.Has(Cue.Reads) && clause.Has(Cue.FeatureMeasured) && !clause.Has(Cue.Depth))
        {
            return null;
        }

        foreach (var hit in clause.Hits)
        {
            var isBehind = hit.First >= quantity.Next && hit.First - quantity.Next <= 2;
            var isBefore = hit.Next <= quantity.First && quantity.First - hit.Next <= 2 && account.Word(hit.First) is "depth" or "cuts" or "doc" or "passes" or "taking" or "cut" or "infeed" or "deep";
            if (hit.Cue == Cue.Depth && account.Word(quantity.Next) != "too" && (isBehind && account.Word(hit.First) is not ("takes" or "taking") && !(account.Word(hit.First) is "deep" && clause.Has(Cue.Feature)) || isBefore && hit.Next - hit.First < 4))
            {
                return quantity.Kind == UnitKind.Length ? quantity.Length : new Length(quantity.Value, account.Drawing);
            }
        }

        return null;
    }

    private void ReadVerdict(Clause clause, int index)
    {
        if (settings.Count == 0 || settings[^1].Verdict is not null || index - lastClause > 1)
        {
            return;
        }

        var hit = clause.Hits.Find(cue => cue.Cue is Cue.VerdictGood or Cue.VerdictChatter or Cue.VerdictRubbed or Cue.VerdictPoor && clause.IsTonight);
        if (hit.Next > 0 && !clause.HasBefore(Cue.Negation, hit.First) && (index == lastClause || clause.Sentence == account.Clauses[lastClause].Sentence || clause.Next - clause.First < 8))
        {
            var first = hit.First;
            var words = index == lastClause ? (account.TextOf(first, hit.Next), account.SpanOf(first, hit.Next)) : Wording.Of(account, clause.First, clause.Next) ?? (account.TextOf(first, hit.Next), account.SpanOf(first, hit.Next));
            settings[^1] = settings[^1] with { Verdict = words.Item1 };
        }
    }
}
