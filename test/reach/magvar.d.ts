/** The package carries no types of its own. Degrees, kilometres; answers the declination rounded to 0.01 degrees. */
declare module 'magvar' {
  export function magvar(latitudeDeg: number, longitudeDeg: number, heightKm?: number, date?: Date): number;
}
