namespace Journal.Core.Import;

/// <summary>
/// Names of months as makers write them: in full or cut short, in English and the languages of its neighbours. Source: the names of
/// the Unicode Common Locale Data Repository (from memory).
/// </summary>
internal static class MonthNames
{
    private const int Shortest = 3;

    private static readonly string[][] Languages =
    [
        ["january", "february", "march", "april", "may", "june", "july", "august", "september", "october", "november", "december"],
        ["januar", "februar", "märz", "april", "mai", "juni", "juli", "august", "september", "oktober", "november", "dezember"],
        ["janvier", "février", "mars", "avril", "mai", "juin", "juillet", "août", "septembre", "octobre", "novembre", "décembre"],
        ["januari", "februari", "maart", "april", "mei", "juni", "juli", "augustus", "september", "oktober", "november", "december"],
        ["enero", "febrero", "marzo", "abril", "mayo", "junio", "julio", "agosto", "septiembre", "octubre", "noviembre", "diciembre"],
        ["gennaio", "febbraio", "marzo", "aprile", "maggio", "giugno", "luglio", "agosto", "settembre", "ottobre", "novembre", "dicembre"],
        ["janeiro", "fevereiro", "março", "abril", "maio", "junho", "julho", "agosto", "setembro", "outubro", "novembro", "dezembro"],
        ["januari", "februari", "mars", "april", "maj", "juni", "juli", "augusti", "september", "oktober", "november", "december"],
        ["januar", "februar", "marts", "april", "maj", "juni", "juli", "august", "september", "oktober", "november", "december"],
        ["januar", "februar", "mars", "april", "mai", "juni", "juli", "august", "september", "oktober", "november", "desember"],
        ["jänner", "feber", "mrz", "apr", "mai", "jun", "jul", "aug", "sept", "okt", "nov", "dez"],
        ["jan", "feb", "mrt", "apr", "mei", "jun", "jul", "aug", "sep", "okt", "nov", "dec"],
        ["janvier", "fevrier", "mars", "avril", "mai", "juin", "juillet", "aout", "septembre", "octobre", "novembre", "decembre"],
    ];

    /// <summary>The month, 1 to 12, that a name means, its beginning of three letters or more; null where it means none, or several.</summary>
    public static int? Find(string name)
    {
        var word = name.TrimEnd('.').ToLowerInvariant();
        var meant = word.Length < Shortest ? [] : Languages
            .SelectMany(names => names.Index().Where(one => one.Item.StartsWith(word, StringComparison.Ordinal)).Select(one => one.Index + 1))
            .Distinct()
            .ToList();
        return meant is [var month] ? month : null;
    }
}
