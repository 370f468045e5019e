using System.Globalization;
using ExamDocs.Core.Cases;
using ExamDocs.Core.Measurement;

namespace ExamDocs.Core.Rules.Measurement;

/// <summary>The analysis of an item, for rules that look at its examination.</summary>
internal static class MeasuredNow
{
    /// <summary>Null where the analysis is of another examination of the item.</summary>
    public static MeasurementAnalysis? Of(ExaminationCase examination) =>
        ReferenceEquals(examination.Item?.Examination, examination) ? examination.Item.Measured : null;

    /// <summary>JSON pointer of a station, relative to its examination.</summary>
    public static string Member(ProfileStation station) => string.Create(CultureInfo.InvariantCulture, $"/diameters/{station.Index}");
}
