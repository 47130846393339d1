using System.Net;
using System.Net.Sockets;
using System.Runtime.CompilerServices;
using Amazon;
using Amazon.Runtime;
using Amazon.Runtime.CredentialManagement;
using Amazon.S3;
using Amazon.S3.Model;
using Journal.Core.Model;

namespace Journal.Site.Sending;

/// <summary>
/// Brings files to a bucket. Who may read them is set at the bucket alone: nothing is made public here.
/// </summary>
internal sealed class S3Transport(S3Destination destination, Func<string, string?> variable) : ITransport
{
    private const int PageOfList = 1000;
    private AmazonS3Client? client;

    /// <inheritdoc/>
    public int AtOnce => 8;

    /// <inheritdoc/>
    public bool ArrivesAtOnce => false;

    private string Top => destination.Folder.Length == 0 ? "" : destination.Folder + "/";

    /// <inheritdoc/>
    public string? Draft => null;

    /// <inheritdoc/>
    public Task OpenAsync(CancellationToken cancellation)
    {
        client ??= new AmazonS3Client(Credentials(), Settings());
        return Task.CompletedTask;
    }

    /// <inheritdoc/>
    public async Task<byte[]?> ReadAsync(string address, CancellationToken cancellation)
    {
        try
        {
            using var found = await client!.GetObjectAsync(destination.Bucket, Top + address, cancellation);
            using var contents = new MemoryStream();
            await found.ResponseStream.CopyToAsync(contents, cancellation);
            return contents.ToArray();
        }
        catch (AmazonS3Exception e) when (e.ErrorCode == "NoSuchKey")
        {
            return null;
        }
    }

    /// <inheritdoc/>
    public async IAsyncEnumerable<(string Address, long Length)> ListAsync([EnumeratorCancellation] CancellationToken cancellation)
    {
        var wanted = new ListObjectsV2Request { BucketName = destination.Bucket, Prefix = Top, MaxKeys = PageOfList };
        ListObjectsV2Response page;
        do
        {
            page = await client!.ListObjectsV2Async(wanted, cancellation);
            foreach (var found in page.S3Objects ?? [])
            {
                yield return (found.Key[Top.Length..], found.Size ?? -1);
            }

            wanted.ContinuationToken = page.NextContinuationToken;
        }
        while (page.IsTruncated == true);
    }

    /// <inheritdoc/>
    public async Task PutAsync(OutgoingFile file, CancellationToken cancellation)
    {
        using var contents = new MemoryStream(file.Contents, writable: false);
        var wanted = new PutObjectRequest
        {
            BucketName = destination.Bucket,
            Key = Top + file.Address,
            InputStream = contents,
            ContentType = file.FileHeaders.ContentType,
            UseChunkEncoding = false,
        };
        wanted.Headers.CacheControl = file.FileHeaders.CacheControl;
        await client!.PutObjectAsync(wanted, cancellation);
    }

    /// <inheritdoc/>
    public Task DeleteAsync(string address, CancellationToken cancellation) => client!.DeleteObjectAsync(destination.Bucket, Top + address, cancellation);

    // A bucket has no folders.
    /// <inheritdoc/>
    public Task RemoveEmptyFoldersAsync(IReadOnlyCollection<string> deleted, CancellationToken cancellation) => Task.CompletedTask;

    /// <inheritdoc/>
    public Task FinishAsync(CancellationToken cancellation) => Task.CompletedTask;

    // RFC 9110: 408, 429 and 5xx may pass; what the store says of rights and names does not.
    /// <inheritdoc/>
    public bool MayPass(Exception failure) => failure switch
    {
        AmazonServiceException { StatusCode: HttpStatusCode.RequestTimeout or HttpStatusCode.TooManyRequests or >= HttpStatusCode.InternalServerError } => true,
        AmazonServiceException { InnerException: HttpRequestException or IOException or SocketException } => true,
        _ => failure is HttpRequestException or IOException or SocketException or TimeoutException,
    };

    /// <inheritdoc/>
    public string? Explain(Exception failure) => failure switch
    {
        AmazonS3Exception { ErrorCode: "NoSuchBucket" } => $"There is no bucket `{destination.Bucket}`. Create it first.",
        AmazonS3Exception { StatusCode: HttpStatusCode.Forbidden } => $"The store refuses these credentials for `{destination.Bucket}`. They must be allowed to list, read, write and delete there.",
        AmazonClientException or HttpRequestException or IOException or SocketException => $"The store could not be reached, or its answer was not understood: {failure.Message}",
        _ => null,
    };

    /// <inheritdoc/>
    public ValueTask DisposeAsync()
    {
        client?.Dispose();
        return ValueTask.CompletedTask;
    }

    // The environment first, then the usual credential file; nothing else is asked.
    private AWSCredentials Credentials()
    {
        if (destination.Profile is null && variable("AWS_ACCESS_KEY_ID") is { Length: > 0 } id && variable("AWS_SECRET_ACCESS_KEY") is { Length: > 0 } secret)
        {
            return variable("AWS_SESSION_TOKEN") is { Length: > 0 } token ? new SessionAWSCredentials(id, secret, token) : new BasicAWSCredentials(id, secret);
        }

        var file = variable("AWS_SHARED_CREDENTIALS_FILE") is { Length: > 0 } named ? named : Path.Combine(HomePath.Home, ".aws", "credentials");
        var profile = destination.Profile ?? (variable("AWS_PROFILE") is { Length: > 0 } usual ? usual : "default");
        return File.Exists(file) && new CredentialProfileStoreChain(file).TryGetAWSCredentials(profile, out var found) ? found
            : throw new SendingException($"There are no credentials for `{destination.Name}`: set AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY, or add the section `{profile}` to {file}.");
    }

    private AmazonS3Config Settings()
    {
        var settings = new AmazonS3Config
        {
            // Tries again are ours to count; a store that speaks the protocol need not know the newest checksums.
            MaxErrorRetry = 0,
            RequestChecksumCalculation = RequestChecksumCalculation.WHEN_REQUIRED,
            ResponseChecksumValidation = ResponseChecksumValidation.WHEN_REQUIRED,
            Timeout = TimeSpan.FromMinutes(2),
        };
        var region = destination.Region ?? variable("AWS_REGION");
        if (destination.Service is { } service)
        {
            settings.ServiceURL = service.ToString();
            settings.ForcePathStyle = true;
            settings.AuthenticationRegion = region ?? "us-east-1";
        }
        else
        {
            settings.RegionEndpoint = region is { Length: > 0 } ? RegionEndpoint.GetBySystemName(region)
                : throw new SendingException($"`{destination.Name}` has neither `region` nor `service`. Add one of them in journal.yaml.");
        }

        return settings;
    }
}
