namespace Slabwright.Examples.Marrowby;

/// <summary>A practice file with the kinds of slips surveys come with.</summary>
internal static class Mistakes
{
    public static string Text() => """
        id,lane,type,severity,from_station,to_station,offset_from_ft,offset_to_ft,length_ft,width_in,depth_in,faulting_in,area_ft2,widening_below_in,count,cause,beside_earlier_repair,through_overlay,date,note
        E01,2,corner break,high,430+10.0,430+13.5,8.5,12,,,,,,,,,,,2025-04-14,good row
        E02,2,transverse cracking,moderate,437+80.0,437+76.0,0,12,12,0.2,,,,,,,,,2025-04-14,ends before it starts
        E03,4,corner break,high,440+00.0,440+03.0,,,,,,,,,,,,,2025-04-14,no lane 4 here
        E04,2,pothole,high,441+00.0,441+02.0,,,,,,,,,,,,,2025-04-14,not a concrete distress
        E05,2,blowup,,606+50.0,606+52.0,,,,,,,,,,,,,2025-04-14,the station equation skips 606+50
        E06,2,transverse cracking,severe-ish,450+00.0,450+00.0,0,12,12,,,,,,,,,,2025-04-14,severity in the crew's own words
        E07,2,spalling of transverse joints,high,455+10.0,455+11.0,0,6,6,8,14,,,,,,,,2025-04-14,deeper than the slab is thick
        E08,3,transverse cracking,low,460+00.0,460+00.0,0,12,12,,,,,,,,,,2025-04-14,lane 3 does not reach here
        E09,2,corner break,high,430+10.0,430+13.5,8.5,12,,,,,,,,,,,2025-04-14,the same as E01
        E10,2,joint deterioration,high,900+00.0,900+02.0,0,12,12,,9,,,,,,,,2025-04-14,past the end of the road
        E11,1,corner break,moderate,470+00.0,470+02.5,,,,,,,,,,,,,2199-01-01,surveyed in the future
        E12,1,longitudinal cracking,moderate,480+00.0,480+30.0,14,14,30,0.2,,,,,,,,,2025-04-14,outside the lane
        E13,1,transverse cracking,moderate,490+00.0,490+00.0,0,12,12,a hair,,,,,,,,,2025-04-14,a width in words

        """;
}
