using System.Security.Cryptography;
using Training.Documents.IssueLog;

namespace Training.Documents.Tests.IssueLog;

public sealed class TreeHeadTests
{
    private static readonly TreeHead Head = new(8, new(Convert.FromHexString(PublishedRoots.Roots[8])), new(2026, 11, 25, 18, 0, 0, 7, TimeSpan.Zero));

    [Fact]
    public void A_head_is_signed_by_its_key_and_by_no_other()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        using var other = ECDsa.Create(ECCurve.NamedCurves.nistP256);

        var signed = Head.Sign(key);

        Assert.Equal(64, signed.Signature.Length);
        Assert.True(signed.IsSignedBy(key));
        Assert.False(signed.IsSignedBy(other));
    }

    [Fact]
    public void Another_size_root_or_time_is_not_what_was_signed()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var signed = Head.Sign(key);

        Assert.All(
            [Head with { Size = 9 }, Head with { Root = MerkleTree.EmptyRoot }, Head with { At = Head.At.AddMilliseconds(1) }],
            head => Assert.False((signed with { Head = head }).IsSignedBy(key)));
    }

    [Fact]
    public void Every_flipped_bit_of_a_signature_and_every_other_length_is_refused()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var signed = Head.Sign(key);

        foreach (var bit in Enumerable.Range(0, 512))
        {
            var bytes = signed.Signature.ToArray();
            bytes[bit / 8] ^= (byte)(1 << (bit % 8));
            Assert.False((signed with { Signature = bytes }).IsSignedBy(key));
        }

        Assert.All([0, 1, 63], length => Assert.False((signed with { Signature = signed.Signature[..length] }).IsSignedBy(key)));
    }

    [Fact]
    public void What_lies_below_a_millisecond_is_cut_before_it_is_signed()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);

        var signed = (Head with { At = Head.At.AddTicks(9_999) }).Sign(key);

        Assert.Equal(Head.At, signed.Head.At);
        Assert.True(signed.IsSignedBy(key));
    }

    [Fact]
    public void OpenSSL_finds_the_same_signature_over_the_RFC_s_bytes_good()
    {
        using var key = ECDsa.Create(ECCurve.NamedCurves.nistP256);
        var signed = Head.Sign(key);
        var folder = Directory.CreateTempSubdirectory("head-");
        try
        {
            string In(string name) => Path.Combine(folder.FullName, name);
            File.WriteAllText(In("key.pem"), key.ExportSubjectPublicKeyInfoPem());
            // RFC 6962 §3.5: version v1(0), tree_hash(1), timestamp, size, root.
            var signedBytes = "0001" + $"{Head.At.ToUnixTimeMilliseconds():x16}" + "0000000000000008" + PublishedRoots.Roots[8];
            File.WriteAllBytes(In("head"), Convert.FromHexString(signedBytes));
            // OpenSSL reads a signature as two ASN.1 integers.
            var der = new System.Formats.Asn1.AsnWriter(System.Formats.Asn1.AsnEncodingRules.DER);
            using (der.PushSequence())
            {
                foreach (var part in new[] { signed.Signature[..32], signed.Signature[32..] }) der.WriteInteger(new System.Numerics.BigInteger(part.Span, isUnsigned: true, isBigEndian: true));
            }

            File.WriteAllBytes(In("signature"), der.Encode());

            Assert.Equal("Verified OK\n", DebianTool.Run("openssl", "openssl", ["dgst", "-sha256", "-verify", In("key.pem"), "-signature", In("signature"), In("head")]));
        }
        finally
        {
            folder.Delete(recursive: true);
        }
    }
}
