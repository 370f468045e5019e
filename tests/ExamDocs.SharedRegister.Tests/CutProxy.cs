using System.Buffers.Binary;
using System.Globalization;
using System.Net;
using System.Net.Sockets;

namespace ExamDocs.SharedRegister.Tests;

/// <summary>
/// Stands between one run and the server, and cuts the session at a statement: before it reaches the server, or once the server has
/// done it and before the run is told. Statements are told apart by the messages of the protocol
/// (postgresql.org/docs/15/protocol-message-formats.html): Sync or Query ends each.
/// </summary>
internal sealed class CutProxy : IDisposable
{
    private readonly TcpListener _listener = new(IPAddress.Loopback, 0);
    private readonly int _server;
    private readonly bool _isAfter;
    private readonly int _cutAt;
    private TcpClient? _run;
    private TcpClient? _to;
    private volatile bool _isCounting;
    private volatile bool _isCut;

    /// <param name="server">Its port.</param>
    /// <param name="cutAt">The statement, from 1, once <see cref="Count"/> was called; 0 to cut none.</param>
    /// <param name="isAfter">Cut once the server has done it.</param>
    public CutProxy(int server, int cutAt, bool isAfter)
    {
        (_server, _cutAt, _isAfter) = (server, cutAt, isAfter);
        _listener.Start();
        new Thread(Serve) { IsBackground = true }.Start();
    }

    /// <summary>Statements that were sent since <see cref="Count"/>.</summary>
    public int Statements { get; private set; }

    public void Count() => _isCounting = true;

    /// <summary>An address of the server, by way of this.</summary>
    public string Through(string address) =>
        address.Replace(
            string.Create(CultureInfo.InvariantCulture, $":{_server}/"),
            string.Create(CultureInfo.InvariantCulture, $":{((IPEndPoint)_listener.LocalEndpoint).Port}/"),
            StringComparison.Ordinal
        ) + "?sslmode=disable";

    public void Dispose()
    {
        _listener.Dispose();
        Cut();
    }

    private void Serve()
    {
        try
        {
            _run = _listener.AcceptTcpClient();
            _to = new TcpClient("127.0.0.1", _server) { NoDelay = true };
            _run.NoDelay = true;
            new Thread(Answers) { IsBackground = true }.Start();
            var (from, to) = (_run.GetStream(), _to.GetStream());
            // The first message has no letter before its length.
            for (var letters = 0; ; letters = 1)
            {
                var message = Message(from, letters);
                if (_isCounting && (message[0] is (byte)'S' or (byte)'Q'))
                {
                    Statements++;
                    if (Statements == _cutAt && !_isAfter)
                        break;
                    _isCut |= Statements == _cutAt;
                }
                to.Write(message);
            }
        }
        catch (Exception ended) when (ended is IOException or SocketException or ObjectDisposedException)
        {
            // One of the two is gone.
        }
        Cut();
    }

    private void Answers()
    {
        try
        {
            var (from, to) = (_to!.GetStream(), _run!.GetStream());
            while (true)
            {
                var message = Message(from, 1);
                // Ready for the next: what was sent is done.
                if (_isCut && message[0] is (byte)'Z')
                    break;
                if (!_isCut)
                    to.Write(message);
            }
        }
        catch (Exception ended) when (ended is IOException or SocketException or ObjectDisposedException)
        {
            // One of the two is gone.
        }
        Cut();
    }

    private static byte[] Message(NetworkStream from, int letters)
    {
        var head = new byte[letters + 4];
        from.ReadExactly(head);
        var message = new byte[letters + BinaryPrimitives.ReadInt32BigEndian(head.AsSpan(letters))];
        head.CopyTo(message, 0);
        from.ReadExactly(message.AsSpan(head.Length));
        return message;
    }

    private void Cut()
    {
        _run?.Dispose();
        _to?.Dispose();
    }
}
