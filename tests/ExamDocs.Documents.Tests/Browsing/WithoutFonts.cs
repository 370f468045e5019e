namespace ExamDocs.Documents.Tests.Browsing;

/// <summary>The browser as on a system that has other fonts than those of the documents; goes away when disposed of.</summary>
internal sealed class WithoutFonts : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("without-fonts-");

    public WithoutFonts()
    {
        var settings = Path.Combine(_folder.FullName, "fonts.conf");
        File.WriteAllText(
            settings,
            "<?xml version=\"1.0\"?><!DOCTYPE fontconfig SYSTEM \"urn:fontconfig:fonts.dtd\"><fontconfig>"
                + "<dir>/usr/share/fonts/truetype/dejavu</dir>"
                + $"<cachedir>{_folder.FullName}/cache</cachedir></fontconfig>"
        );
        File.WriteAllText(Program, $"#!/bin/sh\nexport FONTCONFIG_FILE={settings}\nexec {Documents.Browsing.BrowserPath.Find()} \"$@\"\n");
        File.SetUnixFileMode(Program, UnixFileMode.UserRead | UnixFileMode.UserExecute);
    }

    public string Program => Path.Combine(_folder.FullName, "browser");

    public void Dispose() => _folder.Delete(recursive: true);
}
