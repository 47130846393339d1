using System.Globalization;
using Amazon.Runtime;
using Amazon.S3;
using Journal.Core.Model;
using Journal.Site.Sending;
using RetryPolicy = Journal.Site.Sending.RetryPolicy;

namespace Journal.Site.Tests.Sending;

// Against a server on loopback that speaks the protocol (npm's s3rver).
public sealed class S3TransportTests : IDisposable
{
    private readonly SiteOnDisk site = SiteOnDisk.WithPages(6);
    private readonly S3Server server;
    private readonly Line line;

    public S3TransportTests()
    {
        server = new S3Server(site.Root);
        line = new Line(server.Port);
    }

    [Fact]
    public async Task FirstSecondAndEditedSend_BringWhatChanged()
    {
        Assert.Equal(15, (await Send()).Files.Count);
        Assert.Equal(16, (await Objects()).Count);

        line.TakeRequests();
        Assert.Empty((await Send()).Files);
        Assert.Equal(["GET"], line.TakeRequests().Select(request => request.Split(' ')[0]));

        site.Put("index.html", "edited").Drop("drill/entry/e3.html").Publish();
        var report = await Send();
        Assert.Equal(["index.html"], report.Files);
        Assert.Equal(["drill/entry/e3.html"], report.Deleted);
        Assert.Equal("edited", (await Objects())["index.html"]);
        Assert.Equal(15, (await Objects()).Count);
    }

    [Fact]
    public async Task Headers_TellTypeAndHowLongToKeep()
    {
        await Send();
        using var client = Client();

        var page = await client.GetObjectMetadataAsync(S3Server.Bucket, "www/index.html");
        var names = await Objects();
        var picture = await client.GetObjectMetadataAsync(S3Server.Bucket, "www/" + names.Keys.First(name => name.StartsWith("photos/", StringComparison.Ordinal)));

        Assert.Equal(("text/html; charset=utf-8", "public, must-revalidate, max-age=60"), (page.Headers.ContentType, page.Headers.CacheControl));
        Assert.Equal(("image/webp", "public, max-age=31536000, immutable"), (picture.Headers.ContentType, picture.Headers.CacheControl));
    }

    [Fact]
    public async Task FiveThousandFilesOfWhichThreeChanged_AreThreeUploadsAndTheManifest()
    {
        for (var i = 0; i < 5000; i++)
        {
            site.Put($"drill/entry/more-{i.ToString("0000", CultureInfo.InvariantCulture)}.html", $"page {i}");
        }

        site.Publish();
        server.Hold(site.Folder, "www");
        site.Put("drill/entry/more-0001.html", "edited").Put("drill/entry/more-0002.html", "edited").Put("index.html", "edited").Publish();
        line.TakeRequests();

        await Send();
        var sent = line.TakeRequests();
        await Send(verify: true);
        var listed = line.TakeRequests();

        Assert.Equal(4, sent.Count(request => request.StartsWith("PUT ", StringComparison.Ordinal)));
        Assert.Single(sent, request => request.StartsWith("GET ", StringComparison.Ordinal));
        Assert.Equal(5, sent.Count);
        Assert.Equal(6, listed.Count(request => request.Contains("list-type=2", StringComparison.Ordinal)));
        Assert.Equal(7, listed.Count);
    }

    [Fact]
    public async Task BrokenHalfWay_ReadersMissNoPictureAndTheNextSendGoesOn()
    {
        await Send();
        site.Fill(6, "two");

        await Assert.ThrowsAsync<SendingException>(() => Send(transport => new WatchedCarrier(transport) { Fail = step => step > 9 ? new InvalidOperationException("Killed.") : null }));

        Assert.Empty(SiteOnDisk.MissingPictures(await Objects()));
        WatchedCarrier? next = null;
        await Send(transport => next = new WatchedCarrier(transport));
        Assert.InRange(next!.Sent.Count(), 2, 12);
        Assert.Empty(SiteOnDisk.MissingPictures(await Objects()));
    }

    [Fact]
    public async Task LineCutOnTheWay_IsTakenUpAgain()
    {
        site.Put("photos/0a1b2c3d4e5f60718293a4b5-1920.jpg", new string('x', 300_000)).Publish();
        line.CutAfter = 100_000;

        await Send();

        Assert.Equal(1, line.Cuts);
        Assert.Equal(300_000, (await Objects())["photos/0a1b2c3d4e5f60718293a4b5-1920.jpg"].Length);
    }

    [Fact]
    public async Task WrongCredentials_AreRefusedWithoutShowingThem()
    {
        var refused = await Assert.ThrowsAsync<SendingException>(() => Send(id: "WREN", secret: "hush-hush"));

        Assert.Contains("refuses these credentials", refused.Message, StringComparison.Ordinal);
        Assert.DoesNotContain("hush", refused.ToString(), StringComparison.Ordinal);
    }

    [Fact]
    public async Task BucketThatIsNotThere_IsSaid()
    {
        var refused = await Assert.ThrowsAsync<SendingException>(() => Send(bucket: "nowhere"));

        Assert.Contains("There is no bucket `nowhere`", refused.Message, StringComparison.Ordinal);
    }

    [Fact]
    public async Task CredentialFile_IsReadWhereTheEnvironmentSaysNothing()
    {
        var file = Path.Combine(site.Root, "credentials");
        await File.WriteAllTextAsync(file, $"[shed]\naws_access_key_id = {S3Server.Id}\naws_secret_access_key = {S3Server.Secret}\n");
        var place = Place(S3Server.Bucket) with { Profile = "shed" };
        await using var transport = new S3Transport(place, name => name == "AWS_SHARED_CREDENTIALS_FILE" ? file : null);

        await Sender.SendAsync(site.Order with { Destination = place }, transport, RetryPolicy.Usual, CancellationToken.None);

        Assert.Equal(16, (await Objects()).Count);
    }

    public void Dispose()
    {
        line.Dispose();
        server.Dispose();
        site.Dispose();
    }

    private S3Destination Place(string bucket) => new(new("store"), bucket, "www") { Service = new Uri($"http://127.0.0.1:{line.Port}") };

    private async Task<SendReport> Send(Func<ITransport, ITransport>? change = null, string id = S3Server.Id, string secret = S3Server.Secret, string bucket = S3Server.Bucket, bool verify = false)
    {
        var place = Place(bucket);
        await using var transport = new S3Transport(place, name => name switch { "AWS_ACCESS_KEY_ID" => id, "AWS_SECRET_ACCESS_KEY" => secret, _ => null });
        return await Sender.SendAsync(site.Order with { Destination = place, Verify = verify }, change?.Invoke(transport) ?? transport, new RetryPolicy(4, TimeSpan.FromMilliseconds(1)), CancellationToken.None);
    }

    private AmazonS3Client Client() => new(new BasicAWSCredentials(S3Server.Id, S3Server.Secret), new AmazonS3Config { ServiceURL = $"http://127.0.0.1:{server.Port}", ForcePathStyle = true });

    private async Task<Dictionary<string, string>> Objects()
    {
        using var client = Client();
        var found = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (var one in (await client.ListObjectsV2Async(new() { BucketName = S3Server.Bucket })).S3Objects)
        {
            using var reader = new StreamReader((await client.GetObjectAsync(S3Server.Bucket, one.Key)).ResponseStream);
            found[one.Key["www/".Length..]] = await reader.ReadToEndAsync();
        }

        return found;
    }
}
