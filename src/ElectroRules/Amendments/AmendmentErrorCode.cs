namespace ElectroRules.Amendments;

/// <summary>The codes of what can be wrong with an amendment. Never reused and never renumbered.</summary>
public static class AmendmentErrorCode
{
    /// <summary>The text is not JSON.</summary>
    public const string NotJson = "ERD2001";

    /// <summary>A property that an amendment does not have.</summary>
    public const string UnknownProperty = "ERD2002";

    /// <summary>A property that is written twice.</summary>
    public const string DuplicateProperty = "ERD2003";

    /// <summary>A property that is not written.</summary>
    public const string MissingProperty = "ERD2004";

    /// <summary>A value of the wrong type.</summary>
    public const string WrongType = "ERD2005";

    /// <summary>A text that is empty, or an id or a code of the wrong form.</summary>
    public const string BadText = "ERD2006";

    /// <summary>An edition that the library does not know, or that is named twice, or no edition at all.</summary>
    public const string BadEdition = "ERD2007";

    /// <summary>A value that the unit of the table does not allow: not finite, negative, not a yes or no, not a known size.</summary>
    public const string BadValue = "ERD2008";

    /// <summary>A cell that one amendment changes twice, or a remark that it makes twice.</summary>
    public const string Repeated = "ERD2009";

    /// <summary>A table that the library does not know.</summary>
    public const string UnknownTable = "ERD2010";

    /// <summary>A row that the table does not have in this edition.</summary>
    public const string UnknownRow = "ERD2011";

    /// <summary>A column that the table does not have.</summary>
    public const string UnknownColumn = "ERD2012";

    /// <summary>A table that is absent in this edition.</summary>
    public const string AbsentTable = "ERD2013";

    /// <summary>The edition's value is not the one that the change expects.</summary>
    public const string WrongExpectation = "ERD2014";

    /// <summary>A change that relaxes, or can, and is not marked so.</summary>
    public const string UnmarkedRelaxation = "ERD2015";

    /// <summary>Several amendments change one cell and none of them supersedes all others.</summary>
    public const string Conflict = "ERD2016";

    /// <summary>The amendment is not written for this edition.</summary>
    public const string OtherEdition = "ERD2017";

    /// <summary>Two amendments with one id.</summary>
    public const string DuplicateId = "ERD2018";

    /// <summary>Amendments that supersede each other in a circle.</summary>
    public const string SupersedesCircle = "ERD2019";

    /// <summary>A rule that the library does not know.</summary>
    public const string UnknownRule = "ERD2020";
}
