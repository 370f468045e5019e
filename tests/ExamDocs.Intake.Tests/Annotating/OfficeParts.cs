namespace ExamDocs.Intake.Tests.Annotating;

/// <summary>The longer parts of <see cref="OfficeWorkbook"/>.</summary>
internal static class OfficeParts
{
    public static string Styles(string head, string main) =>
        head
        + $"<styleSheet xmlns=\"{main}\">"
        + "<numFmts count=\"1\"><numFmt numFmtId=\"164\" formatCode=\"yyyy\\-mm\\-dd\"/></numFmts>"
        + "<fonts count=\"2\"><font><sz val=\"11\"/><name val=\"Calibri\"/><family val=\"2\"/></font><font><b/><sz "
        + "val=\"11\"/><name val=\"Calibri\"/><family val=\"2\"/></font></fonts>"
        + "<fills count=\"3\"><fill><patternFill patternType=\"none\"/></fill><fill><patternFill "
        + "patternType=\"gray125\"/></fill><fill><patternFill patternType=\"solid\"><fgColor rgb=\"FF00FF00\"/><bgColor "
        + "indexed=\"64\"/></patternFill></fill></fills>"
        + "<borders count=\"1\"><border><left/><right/><top/><bottom/><diagonal/></border></borders>"
        + "<cellStyleXfs count=\"1\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\"/></cellStyleXfs>"
        + "<cellXfs count=\"4\"><xf numFmtId=\"0\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\"/>"
        + "<xf numFmtId=\"0\" fontId=\"1\" fillId=\"2\" borderId=\"0\" xfId=\"0\" applyFont=\"1\" applyFill=\"1\"/>"
        + "<xf numFmtId=\"164\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\" "
        + "applyAlignment=\"1\" applyProtection=\"1\"><alignment horizontal=\"right\" wrapText=\"1\"/><protection "
        + "locked=\"0\"/></xf>"
        + "<xf numFmtId=\"49\" fontId=\"0\" fillId=\"0\" borderId=\"0\" xfId=\"0\" applyNumberFormat=\"1\"/></cellXfs>"
        + "<cellStyles count=\"1\"><cellStyle name=\"Normal\" xfId=\"0\" builtinId=\"0\"/></cellStyles>"
        + "<dxfs count=\"1\"><dxf><font><color rgb=\"FF9C0006\"/></font></dxf></dxfs><tableStyles count=\"0\" "
        + "defaultTableStyle=\"TableStyleMedium9\" defaultPivotStyle=\"PivotStyleLight16\"/></styleSheet>";

    /// <summary>D2 counts days of the 1904 calendar: 44,531 is 2 December 2025. Row 4 is missing, row 5 hidden.</summary>
    public static string FirstSheet(string head, string main, string links) =>
        head
        + $"<worksheet xmlns=\"{main}\" xmlns:r=\"{links}\">"
        + "<sheetPr><tabColor rgb=\"FFFF0000\"/></sheetPr><dimension ref=\"A1:F5\"/>"
        + "<sheetViews><sheetView tabSelected=\"1\" workbookViewId=\"0\"><pane ySplit=\"1\" topLeftCell=\"A2\" "
        + "activePane=\"bottomLeft\" state=\"frozen\"/><selection pane=\"bottomLeft\" activeCell=\"A2\" "
        + "sqref=\"A2\"/></sheetView></sheetViews>"
        + "<sheetFormatPr defaultRowHeight=\"15\"/><cols><col min=\"1\" max=\"2\" width=\"18\" customWidth=\"1\"/><col "
        + "min=\"3\" max=\"3\" width=\"14\" style=\"3\" customWidth=\"1\"/></cols><sheetData>"
        + "<row r=\"1\" spans=\"1:6\" s=\"1\" customFormat=\"1\"><c r=\"A1\" s=\"1\" t=\"s\"><v>0</v></c><c r=\"B1\" s=\"1\" "
        + "t=\"s\"><v>1</v></c><c r=\"C1\" s=\"1\" t=\"s\"><v>2</v></c><c r=\"D1\" s=\"1\" t=\"s\"><v>3</v></c><c r=\"E1\" "
        + "s=\"1\" t=\"s\"><v>4</v></c><c r=\"F1\" s=\"1\" t=\"s\"><v>5</v></c></row>"
        + "<row r=\"2\" spans=\"1:6\"><c r=\"A2\" t=\"s\"><v>6</v></c><c r=\"B2\" t=\"s\"><v>7</v></c><c r=\"D2\" "
        + "s=\"2\"><v>44531</v></c><c r=\"E2\" t=\"s\"><v>8</v></c><c r=\"F2\" t=\"s\"><v>9</v></c></row>"
        + "<row r=\"3\" spans=\"1:6\" ht=\"30\" customHeight=\"1\"><c r=\"A3\" "
        + "t=\"str\"><f>A2&amp;\"-B\"</f><v>BRG-1-B</v></c><c r=\"B3\" t=\"str\"><f>UPPER(B2)</f><v>BRIDGE, SHORT</v></c><c "
        + "r=\"F3\" t=\"s\"><v>9</v></c></row>"
        + "<row r=\"5\" spans=\"1:6\" hidden=\"1\"><c r=\"A5\" t=\"inlineStr\"><is><t xml:space=\"preserve\"> BRG-9 "
        + "</t></is></c></row></sheetData>"
        + "<conditionalFormatting sqref=\"E2:E5\"><cfRule type=\"cellIs\" dxfId=\"0\" priority=\"1\" "
        + "operator=\"equal\"><formula>\"defect\"</formula></cfRule></conditionalFormatting>"
        + "<dataValidations count=\"1\"><dataValidation type=\"list\" allowBlank=\"1\" showErrorMessage=\"1\" "
        + "sqref=\"F2:F5\"><formula1>\"fit,withdraw\"</formula1></dataValidation></dataValidations>"
        + "<pageMargins left=\"0.7\" right=\"0.7\" top=\"0.75\" bottom=\"0.75\" header=\"0.3\" footer=\"0.3\"/><pageSetup "
        + "paperSize=\"9\" orientation=\"portrait\" r:id=\"rId1\"/>"
        + "<drawing r:id=\"rId2\"/><legacyDrawing r:id=\"rId3\"/><tableParts count=\"1\"><tablePart r:id=\"rId4\"/></tableParts>"
        + "<extLst><ext uri=\"{00000000-0000-0000-0000-000000000001}\" xmlns:q=\"urn:example:unknown\"><q:kept row=\"1\">as it "
        + "is</q:kept></ext></extLst></worksheet>";

    /// <summary>No notes yet, and something after the place where their drawing is named.</summary>
    public static string SecondSheet(string head, string main) =>
        head
        + $"<worksheet xmlns=\"{main}\"><dimension ref=\"A1:A3\"/>"
        + "<sheetData><row r=\"1\"><c r=\"A1\"><v>25</v></c></row><row r=\"3\"><c r=\"A3\"><f>A1*2</f><v>50</v></c><c "
        + "r=\"B3\"><f>NOW()</f><v>46153.5</v></c></row></sheetData>"
        + "<pageMargins left=\"0.7\" right=\"0.7\" top=\"0.75\" bottom=\"0.75\" header=\"0.3\" footer=\"0.3\"/>"
        + "<extLst><ext uri=\"{00000000-0000-0000-0000-000000000002}\"/></extLst></worksheet>";

    public static string Notes(string head, string main) =>
        head
        + $"<comments xmlns=\"{main}\" xmlns:xr=\"http://schemas.microsoft.com/office/spreadsheetml/2014/revision\" "
        + "xmlns:mc=\"http://schemas.openxmlformats.org/markup-compatibility/2006\" mc:Ignorable=\"xr\">"
        + "<authors><author>A. Elm</author><author>tc={22222222-2222-2222-2222-222222222222}</author></authors><commentList>"
        + "<comment ref=\"A2\" authorId=\"0\" shapeId=\"0\"><text><r><rPr><b/><sz val=\"9\"/><rFont val=\"Tahoma\"/></rPr><t "
        + "xml:space=\"preserve\">Checked on the bench.\n</t></r><r><rPr><sz val=\"9\"/><rFont val=\"Tahoma\"/></rPr><t>See "
        + "photo 4.</t></r></text></comment>"
        + "<comment ref=\"B2\" authorId=\"1\" shapeId=\"0\" "
        + "xr:uid=\"{22222222-2222-2222-2222-222222222222}\"><text><t>[Threaded comment] Is this the right "
        + "one?</t></text></comment>"
        + "</commentList></comments>";

    /// <summary>As such drawings are written: prefixes declared once.</summary>
    public static string Boxes() =>
        "<xml xmlns:v=\"urn:schemas-microsoft-com:vml\"\r\n xmlns:o=\"urn:schemas-microsoft-com:office:office\"\r\n "
        + "xmlns:x=\"urn:schemas-microsoft-com:office:excel\">\r\n"
        + " <o:shapelayout v:ext=\"edit\"><o:idmap v:ext=\"edit\" data=\"1\"/></o:shapelayout>"
        + "<v:shapetype id=\"_x0000_t202\" coordsize=\"21600,21600\" o:spt=\"202\" "
        + "path=\"m,l,21600r21600,l21600,xe\"><v:stroke joinstyle=\"miter\"/><v:path gradientshapeok=\"t\" "
        + "o:connecttype=\"rect\"/></v:shapetype>"
        + Box(1025, 1, 0)
        + Box(1026, 1, 1)
        + "\r\n</xml>";

    private static string Box(int number, int row, int column) =>
        $"<v:shape id=\"_x0000_s{number}\" type=\"#_x0000_t202\" "
        + "style='position:absolute;margin-left:60pt;margin-top:2pt;width:100pt;height:60pt;visibility:hidden' "
        + "fillcolor=\"#ffffe1\" o:insetmode=\"auto\"><v:fill color2=\"#ffffe1\"/>"
        + "<v:textbox style='mso-direction-alt:auto'><div style='text-align:left'></div></v:textbox>"
        + "<x:ClientData ObjectType=\"Note\"><x:MoveWithCells/><x:SizeWithCells/><x:Anchor>1, 15, 0, 2, 3, 15, 4, "
        + $"4</x:Anchor><x:AutoFill>False</x:AutoFill><x:Row>{row}</x:Row><x:Column>{column}</x:Column></x:ClientData></v:shape>";

    public static string Drawing(string head, string links) =>
        head
        + "<xdr:wsDr xmlns:xdr=\"http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing\" "
        + $"xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\" xmlns:r=\"{links}\">"
        + "<xdr:twoCellAnchor>"
        + Corner("from", 8, 1)
        + Corner("to", 14, 12)
        + "<xdr:graphicFrame macro=\"\"><xdr:nvGraphicFramePr><xdr:cNvPr id=\"2\" name=\"Chart "
        + "1\"/><xdr:cNvGraphicFramePr/></xdr:nvGraphicFramePr><xdr:xfrm><a:off x=\"0\" y=\"0\"/><a:ext cx=\"0\" "
        + "cy=\"0\"/></xdr:xfrm><a:graphic><a:graphicData "
        + "uri=\"http://schemas.openxmlformats.org/drawingml/2006/chart\"><c:chart "
        + "xmlns:c=\"http://schemas.openxmlformats.org/drawingml/2006/chart\" "
        + "r:id=\"rId1\"/></a:graphicData></a:graphic></xdr:graphicFrame><xdr:clientData/></xdr:twoCellAnchor>"
        + "<xdr:twoCellAnchor>"
        + Corner("from", 8, 14)
        + Corner("to", 10, 18)
        + "<xdr:pic><xdr:nvPicPr><xdr:cNvPr id=\"3\" name=\"Picture 2\"/><xdr:cNvPicPr/></xdr:nvPicPr><xdr:blipFill><a:blip "
        + "r:embed=\"rId2\"/><a:stretch><a:fillRect/></a:stretch></xdr:blipFill><xdr:spPr><a:xfrm><a:off x=\"0\" "
        + "y=\"0\"/><a:ext cx=\"9525\" cy=\"9525\"/></a:xfrm><a:prstGeom "
        + "prst=\"rect\"><a:avLst/></a:prstGeom></xdr:spPr></xdr:pic><xdr:clientData/></xdr:twoCellAnchor></xdr:wsDr>";

    public static string Chart(string head) =>
        head
        + "<c:chartSpace xmlns:c=\"http://schemas.openxmlformats.org/drawingml/2006/chart\" "
        + "xmlns:a=\"http://schemas.openxmlformats.org/drawingml/2006/main\"><c:chart><c:plotArea><c:layout/>"
        + "<c:barChart><c:barDir val=\"col\"/><c:grouping val=\"clustered\"/><c:varyColors val=\"0\"/><c:ser><c:idx "
        + "val=\"0\"/><c:order val=\"0\"/><c:val><c:numRef><c:f>'Bob''s "
        + "list'!$A$1:$A$3</c:f><c:numCache><c:formatCode>General</c:formatCode><c:ptCount val=\"1\"/><c:pt "
        + "idx=\"0\"><c:v>25</c:v></c:pt></c:numCache></c:numRef></c:val></c:ser><c:axId val=\"1\"/><c:axId "
        + "val=\"2\"/></c:barChart>"
        + "<c:catAx><c:axId val=\"1\"/><c:scaling/><c:delete val=\"0\"/><c:axPos val=\"b\"/><c:crossAx "
        + "val=\"2\"/></c:catAx><c:valAx><c:axId val=\"2\"/><c:scaling/><c:delete val=\"0\"/><c:axPos val=\"l\"/><c:crossAx "
        + "val=\"1\"/></c:valAx></c:plotArea><c:plotVisOnly val=\"1\"/></c:chart></c:chartSpace>";

    private static string Corner(string name, int column, int row) =>
        $"<xdr:{name}><xdr:col>{column}</xdr:col><xdr:colOff>0</xdr:colOff><xdr:row>{row}</xdr:row><xdr:rowOff>0</xdr:rowOff></xdr:{name}>";
}
