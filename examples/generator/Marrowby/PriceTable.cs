using Slabwright.Data.Folder;

namespace Slabwright.Examples.Marrowby;

/// <summary>Invented prices: they are of no use for a bid.</summary>
internal static class PriceTable
{
    private const string Prices = """
        code | name | role | unit | unit_price | size_classes | round_to | least_pay | low_share | high_share | source
        M-100 | Mobilisation | lump sum | lump sum | 86000 | | 1 | | 0.85 | 1.25 | invented price
        M-110 | Traffic control, night | traffic control night | each | 5400 | | 1 | | 0.9 | 1.2 | invented price
        F-200 | Full-depth concrete repair | full-depth area | yd2 | 214 | 0=214; 12=187; 30=163; 80=139 | 1 | 8 | 0.88 | 1.3 | invented price
        F-205 | Repair set-up and lifting | repair set-up | each | 310 | | 1 | | 0.9 | 1.2 | invented price
        F-210 | Full-depth saw cut, transverse | transverse saw cut | ft | 7.4 | | 1 | | 0.9 | 1.2 | invented price
        F-211 | Full-depth saw cut, longitudinal | longitudinal saw cut | ft | 5.6 | | 1 | | 0.9 | 1.2 | invented price
        F-212 | Saw cut inside the removal | internal saw cut | ft | 4.1 | | 1 | | 0.9 | 1.2 | invented price
        F-220 | Dowel bar, drilled and anchored | drilled dowel | each | 17.5 | | 1 | | 0.9 | 1.25 | invented price
        F-221 | Dowel bar in basket | basket dowel | each | 12.25 | | 1 | | 0.9 | 1.25 | invented price
        F-222 | Tie bar, drilled and anchored | tie bar | each | 14 | | 1 | | 0.9 | 1.25 | invented price
        F-230 | Isolation board | isolation board | ft | 3.3 | | 1 | | 0.9 | 1.2 | invented price
        F-240 | Transverse joint, sawn and sealed | transverse seal | ft | 4.8 | | 1 | | 0.9 | 1.2 | invented price
        F-241 | Longitudinal joint, sawn and sealed | longitudinal seal | ft | 4.2 | | 1 | | 0.9 | 1.2 | invented price
        F-250 | Asphalt shoulder strip, out and back | shoulder strip | ft | 11.5 | | 1 | | 0.9 | 1.25 | invented price
        F-255 | Edge form | edge form | ft | 6.2 | | 1 | | 0.9 | 1.2 | invented price
        F-260 | Concrete in place of loose base | base concrete | yd3 | 196 | | 0.5 | | 0.85 | 1.3 | invented price
        P-300 | Partial-depth repair | partial-depth area | ft2 | 38 | | 1 | 3 | 0.85 | 1.3 | invented price
        S-400 | Crack and joint sealing | seal length | ft | 2.15 | | 10 | | 0.9 | 1.15 | invented price
        """;

    public static CsvText Text() => Files.Table(Prices);
}
