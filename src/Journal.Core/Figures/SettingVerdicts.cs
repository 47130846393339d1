namespace Journal.Core.Figures;

/// <summary>The maker's word for how a cut went, sorted into what worked and what did not. The words are our own choice.</summary>
internal static class SettingVerdicts
{
    /// <summary>Words that deny something bad.</summary>
    private static readonly string[] Quiet =
    [
        "no chatter", "without chatter", "chatter-free", "chatter free", "did not chatter", "didn't chatter", "stopped chattering", "not bad",
    ];

    private static readonly string[] Chatter = ["chatter", "squeal", "sang", "singing", "howl", "vibrat"];

    private static readonly string[] Bad =
    [
        "fail", "broke", "burn", "smok", "tore", "torn", "rub", "too", "bad", "poor", "rough", "dug", "stall",
        "never", "not", "didn't", "welded", "work-hardened", "oversize", "undersize", "gone", "pulled", "slipped", "grabbed", "snatched", "moved",
    ];

    private static readonly string[] Good =
    [
        "worked", "works", "good", "fine", "ok", "well", "clean", "smooth", "sweet", "nice", "lovely", "perfect", "do-again", "do again", "great",
    ];

    /// <summary>Sorts a word or a sentence: what denies a fault first, then chatter, then other faults, then praise.</summary>
    public static SettingVerdict Of(string? text)
    {
        if (text is null)
        {
            return SettingVerdict.Unclear;
        }

        return Says(text, Quiet) ? SettingVerdict.Worked
            : Says(text, Chatter) ? SettingVerdict.Chattered
            : Says(text, Bad) ? SettingVerdict.Failed
            : Says(text, Good) ? SettingVerdict.Worked
            : SettingVerdict.Unclear;
    }

    private static bool Says(string text, string[] words) => words.Any(word => BeginsAWord(text, word));

    private static bool BeginsAWord(string text, string word)
    {
        var at = text.IndexOf(word, StringComparison.OrdinalIgnoreCase);
        while (at > 0 && char.IsLetter(text[at - 1]))
        {
            at = text.IndexOf(word, at + 1, StringComparison.OrdinalIgnoreCase);
        }

        return at >= 0;
    }
}
