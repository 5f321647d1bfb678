using Duskwright.Plan.Format;

namespace Duskwright.Plan.Tests.Format;

public class HostileTextTests
{
    private const string Head = "{\"format\":\"duskwright-town\",\"version\":1,\"name\":\"X\"";

    [Theory]
    [InlineData(Head + ",\n\"note\":\"\\ud800\"}", "line 2, column 8")]
    [InlineData(Head + ",\"buildings\":[{\"name\":\"\\udc00\"}]}", "line 1, column 73")]
    [InlineData(Head + ",\"\\ud800\":1}", "line 1, column 52")]
    [InlineData(Head + ",\"note\":\"\\ud83dx\"}", "line 1, column 59")]
    public void Half_a_character_is_refused_with_its_place(string text, string where)
    {
        // Source: RFC 8259, section 8.2: an escaped lone surrogate stands for no character, and what a reader does with it is unpredictable.
        var problem = Assert.Single(TownJson.Read(text).Problems);
        Assert.Equal("half-a-character", problem.Rule);
        Assert.Equal(where, problem.Path);
        Assert.Equal($"The text at {where} holds half a character.", problem.Message);
    }

    [Fact]
    public void A_character_written_as_its_two_halves_is_one_character()
    {
        // Source: RFC 8259, section 7: the G clef U+1D11E is written "\uD834\uDD1E".
        Assert.Equal("\U0001D11E", TownJson.Read(Head + ",\"note\":\"\\uD834\\uDD1E\"}").Town!.Note);
    }

    [Fact]
    public void A_backslash_before_a_u_that_is_itself_escaped_is_plain_text() =>
        Assert.Equal("\\ud800", TownJson.Read(Head + ",\"note\":\"\\\\ud800\"}").Town!.Note);

    [Fact]
    public void A_string_that_holds_half_a_character_itself_is_refused() =>
        Assert.Null(TownJson.Read(Head + ",\"note\":\"" + '\ud800' + "\"}").Town);

    [Fact]
    public void A_byte_order_mark_before_the_text_is_forgiven() =>
        Assert.NotNull(TownJson.Read("\uFEFF" + Head + "}").Town);
}
