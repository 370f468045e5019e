namespace ExamDocs.Workbench.Pages;

/// <content>English, for all the kit on record, audit packs, and work that takes its time.</content>
public abstract partial class WorkbenchWords
{
    private sealed partial class English
    {
        public override string AllKit => "All kit";
        public override string AllKitHow =>
            "These pages look at all the kit on record at once, or at all that one employer "
            + "has. None of them decides "
            + "about an item.";
        public override string Pack => "Audit pack";
        public override string PackHow =>
            "What the owner of kit has to show an auditor, an insurer or an authority, in one file: every current document as it was "
            + "issued, what is missing, and how to verify it. It decides nothing and changes nothing.";
        public override string PackAsOf => "As of";
        public override string PackAsOfHow => "How things stood at the end of this day, by what was on record then.";
        public override string PackPremises => "Only at these premises";
        public override string PackItems => "Only these items: ids, one a line";
        public override string PackAllOfThem => "Left empty: all.";
        public override string PackEvidence => "Evidence to enclose (PDF, JPEG, PNG)";
        public override string PackEvidenceHow =>
            "Begin the name of a file with the id or name of an examiner, or with the id or model of "
            + "an item: that is how the pack knows what it is about.";
        public override string PackLanguage => "Language of the pack";
        public override string PackMake => "Build the pack";
        public override string PacksBefore => "Built since the workbench was opened";
        public override string PackStop => "Cancel";
        public override string PackNothingKept => "Nothing of this pack was kept.";
        public override string PackGaps => "What is missing";
        public override string PackNoGaps => "Nothing that is looked for is missing. That does not show that the kit is safe.";
        public override string PackFiles => "The files";
        public override string PackSaveZip => "Save the pack (ZIP)";
        public override string PackSaveCopy => "Save the reading copy (PDF)";
        public override string PackKept =>
            "The ZIP is the file to hand over. Both files stay here until you " + "remove them or close the workbench.";
        public override string PackRemove => "Remove both files from here";
        public override string HowFar => "How far it is";
        public override string Waiting => "Waiting until other work is done.";
        public override string StoppedAsAsked => "Stopped as you asked.";

        public override string PackCounted(int items, int documents, int gaps) =>
            Text($"Items: {items}; documents: {documents}; missing: {gaps}");

        public override string PackMoreGaps(int more) => Text($"{more} more are in the files.");

        public override string PackNext(int gaps) =>
            gaps == 0 ? "Done. Save the files." : "Done. Look at what is missing, then save the files.";
    }
}
