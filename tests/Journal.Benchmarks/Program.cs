using Journal.Benchmarks;
using Journal.Benchmarks.Estimating;
using Journal.Benchmarks.Lessons;
using Journal.Benchmarks.Pictures;
using Journal.Benchmarks.PlainWords;
using Journal.Benchmarks.Previewing;
using Journal.Benchmarks.Programs;
using Journal.Benchmarks.Publishing;
using Journal.Benchmarks.Searching;
using Journal.Benchmarks.Import;

if (Measured.Run(args) is { } status)
{
    return status;
}

if (Child.DidWork(args))
{
    return 0;
}

// Each benchmark is one class; more are added here. Without a name all of them run.
IBenchmark[] all = [new EstimateBenchmark("estimate", [], 0.3), new EstimateBenchmark("estimate-without", [new("part-7")], 0.5), new LessonsBookBenchmark(), new PictureBenchmark(), new PreviewBenchmark(), new PublishBenchmark(), new StartBenchmark(), new TakeInBenchmark(), new FindBenchmark(), new RenameBenchmark(), new PlainWordsBenchmark()];

var wanted = args.Length == 0 ? all : [.. all.Where(benchmark => args.Contains(benchmark.Name, StringComparer.Ordinal))];
if (wanted.Length == 0)
{
    Console.Error.WriteLine($"No benchmark has that name. There are: {string.Join(", ", all.Select(benchmark => benchmark.Name))}.");
    return 2;
}

var missed = wanted.Count(benchmark => !benchmark.Measure(Console.Out));
return missed == 0 ? 0 : 1;
