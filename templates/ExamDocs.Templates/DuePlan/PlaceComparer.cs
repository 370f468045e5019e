using ExamDocs.Core.Identity;

namespace ExamDocs.Templates.DuePlan;

/// <summary>An employer and its premises are the same however their names are written: legal form, capitals and blanks aside.</summary>
internal sealed class PlaceComparer : IEqualityComparer<PlannedPlace>
{
    public static PlaceComparer Instance { get; } = new();

    public bool Equals(PlannedPlace? x, PlannedPlace? y) => ReferenceEquals(x, y) || (x is not null && y is not null && Key(x) == Key(y));

    public int GetHashCode(PlannedPlace obj) => Key(obj).GetHashCode();

    private static (string Employer, string Premises) Key(PlannedPlace place) =>
        (FirmName.Fold(place.Employer), FirmName.Fold(place.Premises));
}
