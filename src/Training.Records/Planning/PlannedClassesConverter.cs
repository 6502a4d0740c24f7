using Microsoft.EntityFrameworkCore.ChangeTracking;
using Microsoft.EntityFrameworkCore.Storage.ValueConversion;
using Training.Certification;

namespace Training.Records;

/// <summary>The classes of a plan as a stored list.</summary>
internal sealed class PlannedClassesConverter() : ValueConverter<IReadOnlyList<PlannedClass>, string>(
    classes => StoredJson.Write(classes),
    stored => StoredJson.Read<PlannedClass>(stored));

internal sealed class PlannedClassesComparer() : ValueComparer<IReadOnlyList<PlannedClass>>(
    (left, right) => ReferenceEquals(left, right) || (left != null && right != null && StoredJson.Write(left) == StoredJson.Write(right)),
    classes => StringComparer.Ordinal.GetHashCode(StoredJson.Write(classes)),
    classes => classes);
