using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;

namespace Training.Records;

/// <summary>The hospitals of a bite plan as a stored list.</summary>
internal sealed class PlannedHospitalsConverter() : ValueConverter<IReadOnlyList<PlannedHospital>, string>(
    hospitals => StoredJson.Write(hospitals),
    stored => StoredJson.Read<PlannedHospital>(stored));

internal sealed class PlannedHospitalsComparer() : ValueComparer<IReadOnlyList<PlannedHospital>>(
    (left, right) => ReferenceEquals(left, right) || (left != null && right != null && left.SequenceEqual(right)),
    hospitals => hospitals.Aggregate(0, (hash, hospital) => HashCode.Combine(hash, hospital)),
    hospitals => hospitals);
