namespace Journal.Benchmarks;

/// <summary>One thing measured against a floor.</summary>
internal interface IBenchmark
{
    /// <summary>Its name on the command line.</summary>
    string Name { get; }

    /// <summary>Measures and tells; false where it took too much.</summary>
    bool Measure(TextWriter output);
}
