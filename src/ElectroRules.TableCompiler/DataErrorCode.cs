namespace ElectroRules.TableCompiler;

/// <summary>The kinds of error in a data file. A code is permanent: it is never reused and never renumbered.</summary>
internal static class DataErrorCode
{
    internal const string NotJson = "ERD1001";
    internal const string PropertyTwice = "ERD1002";
    internal const string UnknownProperty = "ERD1003";
    internal const string MissingProperty = "ERD1004";
    internal const string WrongType = "ERD1005";
    internal const string EmptyText = "ERD1006";
    internal const string EmptyList = "ERD1007";
    internal const string FileNameIsNotKey = "ERD1008";
    internal const string MalformedKey = "ERD1009";
    internal const string KeyTwice = "ERD1010";
    internal const string IdentifiersCollide = "ERD1011";

    internal const string UnknownEdition = "ERD1020";
    internal const string EditionTwice = "ERD1021";
    internal const string EditionNowhere = "ERD1022";
    internal const string UnknownUnit = "ERD1023";
    internal const string UnknownLookup = "ERD1024";
    internal const string UnknownDirection = "ERD1025";
    internal const string UnknownLetter = "ERD1026";
    internal const string UnknownSize = "ERD1027";
    internal const string UnknownColumn = "ERD1028";

    internal const string RowsDisordered = "ERD1040";
    internal const string EdgesNotIncreasing = "ERD1041";
    internal const string NotMonotone = "ERD1042";
    internal const string WrongNumberOfValues = "ERD1043";
    internal const string WrongNumberOfLetters = "ERD1044";
    internal const string LetterAgainstValue = "ERD1045";
    internal const string NotANumber = "ERD1046";

    internal const string UnknownSource = "ERD1060";
    internal const string UnusedSource = "ERD1061";
    internal const string BlockWithoutSource = "ERD1062";
    internal const string MalformedAddress = "ERD1063";

    internal const string MalformedRuleCode = "ERD1080";
    internal const string MalformedSlug = "ERD1081";
    internal const string MalformedRuleName = "ERD1082";
    internal const string UnknownRuleKind = "ERD1083";
    internal const string UnknownConfidence = "ERD1084";
    internal const string SectionWithoutCode = "ERD1085";
}
