// An archive (.zip) of the record and its photos, nothing packed: photos are packed already. Equal content gives equal bytes.

function checkSum(bytes) {
    let sum = 0xffffffff;
    for (const byte of bytes) {
        sum ^= byte;
        for (let bit = 0; bit < 8; bit++) sum = (sum >>> 1) ^ (sum & 1 ? 0xedb88320 : 0);
    }
    return (sum ^ 0xffffffff) >>> 0;
}

/** Little-endian numbers, each given with its bytes. */
function numbers(...pairs) {
    const bytes = [];
    for (const [value, size] of pairs) for (let n = 0; n < size; n++) bytes.push((value >>> (8 * n)) & 0xff);
    return new Uint8Array(bytes);
}

/** What both headers of a file say: version, flag for UTF-8 names, not packed, 1 January 1980, sum and sizes. */
const aboutFile = file => [
    [20, 2],
    [0x0800, 2],
    [0, 2],
    [0, 2],
    [0x21, 2],
    [file.sum, 4],
    [file.bytes.length, 4],
    [file.bytes.length, 4],
    [file.name.length, 2],
    [0, 2],
];

function archive(files) {
    const [parts, index] = [[], []];
    let at = 0;
    for (const { name, content } of files) {
        const file = { name: new TextEncoder().encode(name), bytes: content, sum: checkSum(content) };
        index.push(
            numbers([0x02014b50, 4], [20, 2], ...aboutFile(file), [0, 2], [0, 2], [0, 2], [0, 4], [at, 4]),
            file.name,
        );
        const local = [numbers([0x04034b50, 4], ...aboutFile(file)), file.name, file.bytes];
        parts.push(...local);
        at += local.reduce((sum, part) => sum + part.length, 0);
    }
    const size = index.reduce((sum, part) => sum + part.length, 0);
    const end = numbers(
        [0x06054b50, 4],
        [0, 2],
        [0, 2],
        [files.length, 2],
        [files.length, 2],
        [size, 4],
        [at, 4],
        [0, 2],
    );
    return new Blob([...parts, ...index, end], { type: "application/zip" });
}
