namespace Training.Scoring;

/// <summary>What a piece of kit is. Tubes are not among them: tube restraint is no worker's skill.</summary>
public enum KitKind
{
    /// <summary>A snake hook.</summary>
    Hook,

    /// <summary>Tongs.</summary>
    Tongs,

    /// <summary>A bucket with a lid that locks.</summary>
    Bucket,

    /// <summary>A bag in its frame.</summary>
    Bag,

    /// <summary>A box that locks.</summary>
    LockingBox,

    /// <summary>Gaiters.</summary>
    Gaiters,

    /// <summary>A model (rubber or rope) snake.</summary>
    ModelSnake,

    /// <summary>A radio, or whatever else calls for help.</summary>
    Radio,

    /// <summary>What a bite drill needs: marker, watch, card of the plan.</summary>
    DrillSet,
}
