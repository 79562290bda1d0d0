namespace Slabwright.Examples.Marrowby;

/// <summary>Invented mixes and breaks: no plant makes them.</summary>
internal static class MixTables
{
    private const string MixRows =
        """
        id | name | class | cement_kind | cement_lb_per_yd3 | water_lb_per_yd3 | coarse_lb_per_yd3 | fine_lb_per_yd3 | air_share | accelerator | accelerator_dose_share | price_per_yd3
        FAST | Marrowby Fast | four hours | type iii | 900 | 333 | 1600 | 979 | 0.055 | non chloride | 0.02 | 268
        NIGHT | Marrowby Night | eight hours | type i | 885 | 354 | 1650 | 864 | 0.06 | non chloride | 0.02 | 204
        EARLY | Marrowby Early | twelve hours | type iii | 710 | 284 | 1750 | 1075 | 0.065 | | | 176
        PLAIN | Marrowby Plain | ordinary | type i | 610 | 262 | 1780 | 1187 | 0.065 | | | 145
        """;

    private const string BreakRows =
        """
        mix | kind | age_h | strength_psi | curing_temp_f | use | pulse_velocity_ft_per_s
        FAST | compressive | 3 | 870 | 73.4 | | 9150
        FAST | compressive | 3 | 940 | 73.4 | | 9260
        FAST | compressive | 4 | 1790 | 73.4 | | 10350
        FAST | compressive | 4 | 1900 | 73.4 | | 10420
        FAST | compressive | 5 | 2440 | 73.4 | | 10980
        FAST | compressive | 5 | 2570 | 73.4 | | 11090
        FAST | compressive | 6 | 2960 | 73.4 | | 11370
        FAST | compressive | 6 | 3120 | 73.4 | | 11450
        FAST | compressive | 8 | 3600 | 73.4 | | 11790
        FAST | compressive | 12 | 4330 | 73.4 | | 12180
        FAST | compressive | 24 | 5280 | 73.4 | | 12640
        FAST | compressive | 5 | 2410 | 73.4 | check |
        NIGHT | compressive | 4 | 430 | 73.4 | |
        NIGHT | compressive | 6 | 1420 | 73.4 | |
        NIGHT | compressive | 6 | 1510 | 73.4 | |
        NIGHT | compressive | 7 | 1900 | 73.4 | |
        NIGHT | compressive | 8 | 2280 | 73.4 | |
        NIGHT | compressive | 8 | 2390 | 73.4 | |
        NIGHT | compressive | 12 | 3210 | 73.4 | |
        NIGHT | compressive | 24 | 4380 | 73.4 | |
        NIGHT | compressive | 72 | 5590 | 73.4 | |
        NIGHT | compressive | 8 | 2210 | 73.4 | check |
        EARLY | third point flexural | 8 | 195 | 73.4 | |
        EARLY | third point flexural | 10 | 262 | 73.4 | |
        EARLY | third point flexural | 12 | 318 | 73.4 | |
        EARLY | third point flexural | 12 | 331 | 73.4 | |
        EARLY | third point flexural | 18 | 410 | 73.4 | |
        EARLY | third point flexural | 24 | 462 | 73.4 | |
        EARLY | third point flexural | 72 | 588 | 73.4 | |
        """;

    /// <summary>Writes both tables.</summary>
    public static void Write(string folder)
    {
        Files.Write(folder, "mixes.csv", Files.Table(MixRows));
        Files.Write(folder, "breaks.csv", Files.Table(BreakRows));
    }
}
