using ExamDocs.Core.Findings;

namespace ExamDocs.Core.Tests.Findings;

public sealed class RecordPointerTests
{
    [Theory]
    [InlineData("/items/3/serial", "items", 3)]
    [InlineData("/items/0", "items", 0)]
    [InlineData("/examinations/12/observations/4/state", "examinations", 12)]
    [InlineData("/items/2147483647/", "items", int.MaxValue)]
    public void A_place_in_a_row_is_about_that_row(string pointer, string list, int row) =>
        Assert.Equal(new RecordPointer(list, row), RecordPointer.ToRow(pointer));

    [Theory]
    [InlineData("")]
    [InlineData("/")]
    [InlineData("/items")]
    [InlineData("/visit/employer/name")]
    [InlineData("/items/-1/id")]
    [InlineData("/items/+1/id")]
    [InlineData("/items/ 1/id")]
    [InlineData("/items/2147483648/id")]
    public void What_is_no_row_is_about_none(string pointer) => Assert.Null(RecordPointer.ToRow(pointer));
}
