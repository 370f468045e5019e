using System.Text.Encodings.Web;
using System.Text.Json;
using System.Text.Json.Serialization;
using NodaTime;
using NodaTime.Text;

namespace ExamDocs.Core.Records;

/// <summary>How categories and regimes stand in their data files: unknown and doubled members are errors.</summary>
public static class RuleJson
{
    internal const int MaxDepth = 32;

    public static JsonSerializerOptions Options { get; } =
        new()
        {
            PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
            UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
            AllowDuplicateProperties = false,
            RespectNullableAnnotations = true,
            MaxDepth = MaxDepth,
            WriteIndented = true,
            Encoder = JavaScriptEncoder.UnsafeRelaxedJsonEscaping,
            Converters = { new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false), new Days() },
        };

    private sealed class Days : JsonConverter<LocalDate>
    {
        public override LocalDate Read(ref Utf8JsonReader reader, Type typeToConvert, JsonSerializerOptions options) =>
            LocalDatePattern.Iso.Parse(reader.GetString() ?? "") is { Success: true, Value: var day }
                ? day
                : throw new JsonException("a date is written year-month-day, for example 2026-05-11");

        public override void Write(Utf8JsonWriter writer, LocalDate value, JsonSerializerOptions options) =>
            writer.WriteStringValue(LocalDatePattern.Iso.Format(value));
    }
}
