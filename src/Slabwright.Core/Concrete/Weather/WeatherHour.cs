namespace Slabwright.Core.Concrete.Weather;

/// <summary>
/// Weather at an instant and in the hour that begins there. Air, humidity, wind and cloud hold at the instant; sun is the mean and rain the
/// sum over the hour that follows.
/// </summary>
/// <param name="Air">Air temperature, °C.</param>
/// <param name="Humidity">Relative humidity, share of 1.</param>
/// <param name="Wind">Wind speed as the station measures it (10 m above ground), m/s.</param>
/// <param name="Sun">Sun on a level surface, direct and diffuse, W/m².</param>
/// <param name="Cloud">Sky covered by cloud, share of 1.</param>
/// <param name="Rain">Rain in the hour, m.</param>
public readonly record struct WeatherHour(double Air, double Humidity, double Wind, double Sun, double Cloud, double Rain = 0);

/// <summary>How far the truth may lie from a forecast hour: standard deviations, in the units of <see cref="WeatherHour"/>; sun as a share of itself.</summary>
/// <param name="Air">Air temperature, K.</param>
/// <param name="Humidity">Relative humidity, share of 1.</param>
/// <param name="Wind">Wind speed, m/s.</param>
/// <param name="Sun">Sun, share of its forecast.</param>
/// <param name="Cloud">Cloud, share of 1.</param>
public readonly record struct WeatherSpread(double Air, double Humidity, double Wind, double Sun, double Cloud);

/// <summary>
/// One draw of how the night differs from the forecast: standard normal numbers, one a variable, the same for the whole run. A warm night is
/// warm in all its hours.
/// </summary>
/// <param name="Air">For the air temperature.</param>
/// <param name="Humidity">For the humidity.</param>
/// <param name="Wind">For the wind.</param>
/// <param name="Sun">For the sun.</param>
/// <param name="Cloud">For the cloud.</param>
public readonly record struct WeatherDraw(double Air, double Humidity, double Wind, double Sun, double Cloud);

/// <summary>Where the weather was taken.</summary>
/// <param name="Latitude">Degrees, north positive.</param>
/// <param name="Longitude">Degrees, east positive.</param>
/// <param name="UtcOffset">Local standard time minus universal time, h; west of Greenwich negative.</param>
/// <param name="Elevation">Metres above the sea.</param>
public sealed record WeatherSite(double Latitude, double Longitude, double UtcOffset, double Elevation = 0);

/// <summary>Hours a file does not give, or gives badly, bridged straight between the neighbours.</summary>
/// <param name="From">First hour bridged.</param>
/// <param name="Hours">How many.</param>
/// <param name="Variable">Which variable; <c>all</c> where whole rows are missing.</param>
public sealed record WeatherGap(DateTime From, int Hours, string Variable);
