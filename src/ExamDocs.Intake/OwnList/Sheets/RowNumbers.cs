using System.Globalization;

namespace ExamDocs.Intake.OwnList.Sheets;

/// <summary>Row numbers in few words: 3, 5-9, 12.</summary>
internal static class RowNumbers
{
    public static string Of(IEnumerable<int> numbers)
    {
        var runs = new List<(int From, int To)>();
        foreach (var number in numbers.Distinct().Order())
        {
            if (runs.Count > 0 && runs[^1].To == number - 1)
                runs[^1] = (runs[^1].From, number);
            else
                runs.Add((number, number));
        }
        return string.Join(
            ", ",
            runs.Select(r =>
                r.From == r.To ? Shown(r.From)
                : r.To == r.From + 1 ? $"{Shown(r.From)}, {Shown(r.To)}"
                : $"{Shown(r.From)}-{Shown(r.To)}"
            )
        );
    }

    private static string Shown(int number) => number.ToString(CultureInfo.InvariantCulture);
}
