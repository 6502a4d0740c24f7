using System.Security.Cryptography;
using System.Text.Json;
using Training.Courses;
using Training.Scoring;

namespace Training.Records;

/// <summary>
/// Tells a repeated post from another content under the same id: SHA-256, lower-case hex, over a JSON array whose first item names
/// the layout. It covers what a person gave or an instructor observed. Clock values are left out: a server that stamps the same post
/// twice, a second apart, must still recognise it. A new layout gets a new first item; stored hashes are never recomputed.
/// </summary>
internal static class ContentHash
{
    /// <summary>["sitting/1", person, course hash, quiz, seed, [[question, version, [options]] …], [[question, [options], number or null, language] …]], answers in the order of the draw.</summary>
    internal static string Of(Sitting sitting) => Hash(writer =>
    {
        writer.WriteStringValue("sitting/1");
        writer.WriteStringValue(sitting.PersonId);
        writer.WriteStringValue(sitting.Draw.CourseHash);
        writer.WriteStringValue(sitting.Draw.QuizId);
        writer.WriteNumberValue(sitting.Draw.Seed);
        WriteList(writer, sitting.Draw.Questions, question =>
        {
            writer.WriteStringValue(question.QuestionId);
            writer.WriteStringValue(question.QuestionVersion);
            WriteList(writer, question.OptionIds, writer.WriteStringValue, isRow: false);
        });
        var answers = sitting.Answers.ToDictionary(answer => answer.QuestionId, StringComparer.Ordinal);
        WriteList(writer, sitting.Draw.Questions.Where(question => answers.ContainsKey(question.QuestionId)), question =>
        {
            var answer = answers[question.QuestionId];
            writer.WriteStringValue(answer.QuestionId);
            WriteList(writer, answer.OptionIds, writer.WriteStringValue, isRow: false);
            if (answer.Number is { } number) writer.WriteNumberValue(number);
            else writer.WriteNullValue();
            writer.WriteStringValue(answer.Language.Tag());
        });
    });

    /// <summary>["scoresheet/3", class, candidate, instructor, course hash, checklist, version, subject, try, [[step, observation] …], stopped at or null, live conditions or null, [surroundings, °C or null, kit, [[piece, inspection] …]], language, identity confirmed, signed name, remarks, impression 1 to 4 or null, instructions read at or null, seconds or null].</summary>
    internal static string Of(Scoresheet sheet) => Hash(writer =>
    {
        writer.WriteStringValue("scoresheet/3");
        writer.WriteStringValue(sheet.ClassId);
        writer.WriteStringValue(sheet.CandidateId);
        writer.WriteStringValue(sheet.InstructorId);
        writer.WriteStringValue(sheet.CourseHash);
        writer.WriteStringValue(sheet.ChecklistId);
        writer.WriteStringValue(sheet.ChecklistVersion);
        writer.WriteStringValue(sheet.Subject.ToString());
        writer.WriteNumberValue(sheet.Try);
        WriteList(writer, sheet.Observations, observation =>
        {
            writer.WriteStringValue(observation.StepId);
            writer.WriteStringValue(observation.Observation.ToString());
        });
        writer.WriteStringValue(sheet.StoppedAtStep);
        if (sheet.Live is { } live) Write(writer, live);
        else writer.WriteNullValue();
        Write(writer, sheet.Conditions);
        writer.WriteStringValue(sheet.Language.Tag());
        writer.WriteBooleanValue(sheet.IdentityConfirmed);
        writer.WriteStringValue(sheet.SignedName);
        writer.WriteStringValue(sheet.Remarks);
        if (sheet.Impression is { } impression) writer.WriteNumberValue((int)impression);
        else writer.WriteNullValue();
        // Stamped once, when the instructor said so, and the same in every repeat of the signature.
        if (sheet.InstructionsReadAt is { } readAt) writer.WriteNumberValue(Instants.Truncate(readAt).ToUnixTimeMilliseconds());
        else writer.WriteNullValue();
        if (sheet.Seconds is { } seconds) writer.WriteNumberValue(seconds);
        else writer.WriteNullValue();
    });

    private static void Write(Utf8JsonWriter writer, LiveConditions live)
    {
        writer.WriteStartArray();
        writer.WriteStringValue(live.PermitNumber);
        writer.WriteStringValue(live.BitePlanCheckedOn.ToString("O", System.Globalization.CultureInfo.InvariantCulture));
        // The call for help was tried at a time that the instructor enters: content, not a stamp.
        writer.WriteNumberValue(Instants.Truncate(live.CommunicationsTestedAt).ToUnixTimeMilliseconds());
        writer.WriteStringValue(live.WatcherId);
        writer.WriteStringValue(live.ModelPassId);
        writer.WriteEndArray();
    }

    private static void Write(Utf8JsonWriter writer, PracticalConditions conditions)
    {
        writer.WriteStartArray();
        writer.WriteStringValue(conditions.Surroundings);
        if (conditions.AirTemperature is { } temperature) writer.WriteNumberValue(temperature);
        else writer.WriteNullValue();
        writer.WriteStringValue(conditions.Kit);
        WriteList(writer, conditions.Pieces, used =>
        {
            writer.WriteStringValue(used.PieceId);
            writer.WriteStringValue(used.InspectionId);
        });
        writer.WriteEndArray();
    }

    private static void WriteList<T>(Utf8JsonWriter writer, IEnumerable<T> items, Action<T> write, bool isRow = true)
    {
        writer.WriteStartArray();
        foreach (var item in items)
        {
            if (isRow) writer.WriteStartArray();
            write(item);
            if (isRow) writer.WriteEndArray();
        }

        writer.WriteEndArray();
    }

    private static string Hash(Action<Utf8JsonWriter> write)
    {
        using var bytes = new MemoryStream();
        using (var writer = new Utf8JsonWriter(bytes))
        {
            writer.WriteStartArray();
            write(writer);
            writer.WriteEndArray();
        }

        return Convert.ToHexStringLower(SHA256.HashData(bytes.GetBuffer().AsSpan(0, (int)bytes.Length)));
    }
}
