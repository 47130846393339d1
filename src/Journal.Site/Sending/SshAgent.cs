using System.Buffers.Binary;
using System.Net.Sockets;
using System.Text;
using Renci.SshNet;
using Renci.SshNet.Security;

namespace Journal.Site.Sending;

/// <summary>
/// The keys that an SSH agent holds: it signs, and never gives a key away. The messages are those of the protocol of SSH
/// agents (draft-ietf-sshm-ssh-agent, from memory): 11 asks for the keys, 12 answers; 13 asks for a signature, 14 answers.
/// </summary>
internal sealed class SshAgent(string socket)
{
    private const byte AskKeys = 11;
    private const byte Keys = 12;
    private const byte AskSignature = 13;
    private const byte Signature = 14;
    private const int LargestAnswer = 256 * 1024;

    /// <summary>The keys as the library wants them; none where no agent answers.</summary>
    public IReadOnlyList<IPrivateKeySource> KeySources()
    {
        try
        {
            var answer = new AgentMessage(Ask([AskKeys], Keys));
            var count = answer.Number();
            var sources = new List<IPrivateKeySource>();
            for (var i = 0; i < count; i++)
            {
                sources.Add(new AgentKey(this, answer.Bytes()));
                answer.Bytes();
            }

            return sources;
        }
        catch (Exception e) when (e is SocketException or IOException or InvalidDataException)
        {
            return [];
        }
    }

    private byte[] Sign(byte[] key, byte[] data, uint how)
    {
        var message = new List<byte> { AskSignature };
        foreach (var bytes in new[] { key, data })
        {
            message.AddRange(Number((uint)bytes.Length));
            message.AddRange(bytes);
        }

        message.AddRange(Number(how));
        return new AgentMessage(Ask([.. message], Signature)).Bytes();
    }

    private byte[] Ask(byte[] message, byte expected)
    {
        using var line = new Socket(AddressFamily.Unix, SocketType.Stream, ProtocolType.Unspecified);
        line.Connect(new UnixDomainSocketEndPoint(socket));
        using var stream = new NetworkStream(line);
        stream.Write([.. Number((uint)message.Length), .. message]);
        var head = new byte[5];
        stream.ReadExactly(head);
        var length = BinaryPrimitives.ReadUInt32BigEndian(head);
        if (head[4] != expected || length is 0 or > LargestAnswer)
        {
            throw new InvalidDataException("The SSH agent did not answer.");
        }

        var answer = new byte[length - 1];
        stream.ReadExactly(answer);
        return answer;
    }

    private static byte[] Number(uint value)
    {
        var bytes = new byte[4];
        BinaryPrimitives.WriteUInt32BigEndian(bytes, value);
        return bytes;
    }

    private sealed class AgentMessage(byte[] bytes)
    {
        private int at;

        /// <summary>The next four bytes as a number, the highest byte first.</summary>
        /// <exception cref="InvalidDataException">The answer is cut short.</exception>
        public uint Number()
        {
            Need(4);
            at += 4;
            return BinaryPrimitives.ReadUInt32BigEndian(bytes.AsSpan(at - 4));
        }

        /// <summary>The next string of bytes: its length as a number, then so many bytes.</summary>
        /// <exception cref="InvalidDataException">The answer is cut short.</exception>
        public byte[] Bytes()
        {
            var length = Number();
            Need(length);
            at += (int)length;
            return bytes[(at - (int)length)..at];
        }

        private void Need(uint count)
        {
            if (count > bytes.Length - at)
            {
                throw new InvalidDataException("The SSH agent's answer is cut short.");
            }
        }
    }

    private sealed class AgentKey(SshAgent agent, byte[] key) : IPrivateKeySource
    {
        /// <summary>How the agent can sign with the key. An RSA key signs with SHA-512, else SHA-256, and never with SHA-1.</summary>
        public IReadOnlyCollection<HostAlgorithm> HostKeyAlgorithms { get; } = Type(key) == "ssh-rsa"
            ? [new AgentAlgorithm(agent, "rsa-sha2-512", key, 4), new AgentAlgorithm(agent, "rsa-sha2-256", key, 2)]
            : [new AgentAlgorithm(agent, Type(key), key, 0)];

        private static string Type(byte[] key) => Encoding.ASCII.GetString(new AgentMessage(key).Bytes());
    }

    private sealed class AgentAlgorithm(SshAgent agent, string name, byte[] key, uint how) : HostAlgorithm(name)
    {
        public override byte[] Data => key;

        public override byte[] Sign(byte[] data) => agent.Sign(key, data, how);

        // An agent signs; it is the server that verifies.
        public override bool VerifySignature(byte[] data, byte[] signature) => false;
    }
}
