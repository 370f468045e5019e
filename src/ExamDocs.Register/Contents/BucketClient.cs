using System.Globalization;
using System.Net;
using Amazon;
using Amazon.Runtime;
using Amazon.Runtime.CredentialManagement;
using Amazon.S3;
using ExamDocs.Register.Model;

namespace ExamDocs.Register.Contents;

/// <summary>How a bucket's service is asked, and what its refusals mean.</summary>
internal static class BucketClient
{
    /// <summary>Others may wait while a few documents are dropped; a session of the server waits at most 100 seconds.</summary>
    public static TimeSpan Patience { get; set; } = TimeSpan.FromSeconds(20);

    /// <exception cref="ContentStoreException">There are no keys.</exception>
    public static AmazonS3Client Of(BucketPlace bucket, string place)
    {
        var config = new AmazonS3Config
        {
            ForcePathStyle = true,
            Timeout = Patience,
            MaxErrorRetry = 2,
            // Not every service knows the newer checksums; each document is compared by its SHA-256 anyhow.
            RequestChecksumCalculation = RequestChecksumCalculation.WHEN_REQUIRED,
            ResponseChecksumValidation = ResponseChecksumValidation.WHEN_REQUIRED,
        };
        if (bucket.Endpoint is { } endpoint)
        {
            config.ServiceURL = endpoint.GetLeftPart(UriPartial.Path);
            config.AuthenticationRegion = bucket.Region ?? "us-east-1";
        }
        else
        {
            config.RegionEndpoint = RegionEndpoint.GetBySystemName(bucket.Region ?? "us-east-1");
        }
        return new(Keys(bucket, place), config);
    }

    /// <summary>From the environment, else the profile of the usual files; no other machine is ever asked for keys.</summary>
    private static AWSCredentials Keys(BucketPlace bucket, string place)
    {
        if (bucket.Profile is null && Environment.GetEnvironmentVariable("AWS_ACCESS_KEY_ID") is { Length: > 0 })
            return new EnvironmentVariablesAWSCredentials();
        var profile = bucket.Profile ?? Environment.GetEnvironmentVariable("AWS_PROFILE") ?? "default";
        return new CredentialProfileStoreChain().TryGetAWSCredentials(profile, out var keys)
            ? keys
            : throw new ContentStoreException(
                $"There are no keys for {place}. Set AWS_ACCESS_KEY_ID and AWS_SECRET_ACCESS_KEY in the environment, or write the "
                    + $"profile {profile} into the file .aws/credentials of your own folder."
            );
    }

    /// <summary>What an answer means, in words; the service's own may hold a key.</summary>
    public static string Words(AmazonServiceException answer)
    {
        var code = string.Create(CultureInfo.InvariantCulture, $"{(int)answer.StatusCode} {answer.ErrorCode}").Trim();
        return answer switch
        {
            { ErrorCode: "NoSuchBucket" } => "there is no such bucket",
            // There was no answer at all.
            _ when (int)answer.StatusCode == 0 => Cause(answer),
            { StatusCode: HttpStatusCode.Forbidden or HttpStatusCode.Unauthorized } => $"its keys are wrong or not enough ({code})",
            { StatusCode: >= HttpStatusCode.InternalServerError } => $"the service failed ({code})",
            _ => $"the service refused ({code})",
        };
    }

    public static bool IsUnreachable(Exception failure) =>
        failure
            is AmazonClientException
                or HttpRequestException
                or IOException
                and not ContentStoreException
                or OperationCanceledException
                or TimeoutException
                or WebException;

    /// <summary>The innermost cause, in one line.</summary>
    public static string Cause(Exception failure) =>
        failure is OperationCanceledException or TimeoutException ? "it did not answer in time"
        : failure.InnerException is { } inner ? Cause(inner)
        : failure.Message.Split('\n')[0].TrimEnd().TrimEnd('.');
}
