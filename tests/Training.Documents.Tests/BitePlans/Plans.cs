using Training.Courses;
using Training.Documents.BitePlans;
using Training.Documents.Fonts;
using Training.Documents.Typesetting;

namespace Training.Documents.Tests.BitePlans;

/// <summary>An invented site. First aid as in the project's own course and its facts; hospitals, people and numbers do not exist.</summary>
internal static class Plans
{
    public static BitePlanPage Of(Language language, PaperSize paper = PaperSize.UsLetter, bool isDemonstration = false) => new()
    {
        Language = language,
        Paper = paper,
        ProviderName = "Quillback Field Safety",
        EmployerName = "Kestrel Ridge Energy",
        SiteName = "Cedar Flat Solar",
        EmergencyServices = "911",
        WithoutSignal = language == Language.English
            ? "Radio channel 4, \"control room\". Satellite phone in the site office: 00, then the number."
            : "Radio canal 4, \"control\". Teléfono satelital en la oficina del sitio: 00 y luego el número.",
        Latitude = 34.89512m,
        Longitude = -117.02244m,
        AccessWords = language == Language.English
            ? "From Ocotillo Road, gate 2 (yellow). The guard opens; gate code 4417. A pickup with lights meets you and leads."
            : "Por Ocotillo Road, puerta 2 (amarilla). Abre el guardia; clave 4417. Una camioneta con luces los espera y los guía.",
        OnSite = "Rosa Delgado Güemes, 760-555-0142, radio 4",
        PoisonControl = "1-800-222-1222",
        Hospitals =
        [
            new("Ocotillo Regional Medical Center", "200 Mesa Avenue, Dry Wells; 760-555-0170", 70),
            new("Sagebrush District Hospital", "18 Juniper Street, Cedar Flat; 760-555-0119", 25),
        ],
        Antivenom =
        [
            new("Sagebrush District Hospital", language == Language.English ? "six vials, for pit vipers" : "seis frascos, para víboras de foseta", "Dana Whitlock", new(2026, 10, 2)),
        ],
        FirstAid = language == Language.English
            ? new(
                ["Get out of reach of the snake. Leave it alone, alive or dead.", "Rings, watches and tight things off before the swelling starts.", "Keep calm and still; limb in a neutral, comfortable position.",
                    "Wash with soap and water; cover with a clean, dry dressing.", "Mark the edge of the swelling and write the time beside it."],
                ["No tourniquet. No pressure bandage for a pit viper.", "Do not cut, suck, cool with ice or shock.", "No alcohol. No aspirin, ibuprofen or naproxen.", "Do not drive yourself. Do not wait for symptoms.", "Do not catch or kill the snake."],
                "US first-aid list, reprinted 2023",
                new(2023, 5, 24))
            : new(
                ["Salga del alcance de la serpiente. Déjela en paz, viva o muerta.", "Quite anillos, relojes y todo lo que apriete antes de que empiece la hinchazón.", "En calma y quieto; la extremidad en posición neutral y cómoda.",
                    "Lave con agua y jabón; cubra con un apósito limpio y seco.", "Marque el borde de la hinchazón y escriba la hora al lado."],
                ["Nada de torniquete. Nada de vendaje de presión si es víbora de foseta.", "No corte, no succione, no ponga hielo ni descargas.", "Nada de alcohol. Sin aspirina, ibuprofeno ni naproxeno.", "No conduzca usted. No espere síntomas.", "No atrape ni mate la serpiente."],
                "Lista de primeros auxilios de EE. UU., reimpresa en 2023",
                new(2023, 5, 24)),
        CheckedOn = new(2026, 9, 1),
        CheckedBy = "Rosa Delgado Güemes",
        ReviewOn = new(2027, 3, 1),
        PrintedOn = new(2026, 11, 26),
        IsDemonstration = isDemonstration,
    };

    public static BitePlanPage Overdue(Language language, PaperSize paper = PaperSize.UsLetter) => Of(language, paper) with { PrintedOn = new(2027, 3, 31) };

    public static byte[] Print(BitePlanPage page) => BitePlanWriter.Write(page, FontFaces.Default);
}
